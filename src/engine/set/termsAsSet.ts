import type { AsSet } from '../../site/asSet.ts';
import type { Gate } from '../../site/gate.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import { readWidths } from '../../site/readWidths.ts';
import type { Site } from '../../site/site.ts';
import type { Widths } from '../../site/widths.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { leavesOf, termsOf } from '../gate/termsOf.ts';
import type { Term } from '../opening.ts';
import { phrase } from '../../phrases/phrase.ts';

const source = phrase`measured on site`;

const measuredLeaf = (term: Term, widths: Widths, on: string): Term => ({
  ...term,
  low: inches(Math.min(...readWidths(widths))),
  planned: leafWidth({ widths }),
  high: leafWidth({ widths }),
  source,
  on,
});

/** A hinge of one size; one that can be adjusted still can, from where it was found. */
const measuredHinge = (term: Term, size: Inches, on: string): Term => {
  const found = { ...term, planned: size, source, on };
  if (term.spread !== 'adjustable') return { ...found, low: size, high: size };
  const [low, high] = [Math.min(term.low, size), Math.max(term.high, size)];
  return { ...found, low: inches(low), high: inches(high) };
};

/**
 * What takes up width in a gate's opening, with leaves and hinges as they were measured again on
 * site in place of those planned; in the order met along the leg, inches. A hinge measured on site
 * has no spread but what it can be adjusted by.
 */
export const termsAsSet = (gate: Gate, site: Site, asSet: AsSet): readonly Term[] => {
  const leaves = leavesOf(gate);
  let hinges = 0;
  return termsOf(gate, site).map((term): Term => {
    if (term.role === 'leaf') {
      const widths = leaves.find(({ id }) => id === term.of)?.id;
      const measured = widths === undefined ? undefined : asSet.leaves[widths];
      return measured === undefined ? term : measuredLeaf(term, measured, asSet.on);
    }
    if (term.role !== 'hinge') return term;
    const leaf = leaves[hinges]?.id;
    hinges += 1;
    const size = leaf === undefined ? undefined : asSet.hinges[leaf];
    return size === undefined ? term : measuredHinge(term, size, asSet.on);
  });
};
