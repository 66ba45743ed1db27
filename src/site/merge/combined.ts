import { joinedLineage } from '../lineage.ts';
import { openDocument } from '../openDocument.ts';
import type { Site } from '../site.ts';
import { clashIdOf, type Clash, type Pick } from './clash.ts';
import { combinedParts } from './combinedParts.ts';
import { orderParts } from './orderedParts.ts';
import { lineUnder } from './refsOf.ts';
import { partsOf } from './partsOf.ts';
import { rehung, standsStill } from './rehung.ts';
import { restoreMissing } from './restored.ts';
import type { Copies } from './sameWay.ts';
import { siteOfParts } from './siteOfParts.ts';
import { wholeGates } from './wholeGates.ts';

/** Two copies as one document, and where they disagree. */
export interface Combination {
  readonly site: Site;
  readonly clashes: readonly Clash[];
}

/** Two copies that make no document together: one of them stays as a whole. */
const wholeOne = ({ first, second }: Copies, pick: Pick, why: string): Combination => {
  const id = clashIdOf('site', 'whole');
  const clash: Clash = {
    id,
    is: 'not together',
    key: 'site',
    kind: 'job',
    field: 'whole',
    base: why,
    first,
    second,
  };
  return { site: pick(id) === 'first' ? first : second, clashes: [clash] };
};

/** Two aligned copies as one document that opens, with the picked side of every disagreement. */
export const combined = (copies: Copies, pick: Pick): Combination => {
  const { base, first, second } = copies;
  const known = base === null ? [] : [base];
  const whole = wholeGates([...known, first, second]);
  const [one, two] = [partsOf(first, whole), partsOf(second, whole)];
  const was = base === null ? new Map() : partsOf(base, whole);
  const { parts, clashes } = combinedParts({
    base: was,
    first: one,
    second: two,
    pick,
    stoodStill: (part, copy) =>
      base !== null &&
      lineUnder(part) !== null &&
      standsStill(base, copies[copy], part.kind === 'gates' ? 'gates' : 'pins', part.id),
  });
  restoreMissing(parts, [one, two, was]);
  const all = [...clashes];
  orderParts(parts, { base: was, first: one, second: two, pick, clashes: all });
  const lineage = joinedLineage(first.lineage, second.lineage);
  const site = rehung(siteOfParts(parts, lineage) as Site, [first, second, ...known]);
  const opened = openDocument(site);
  return opened.ok ? { site: opened.value, clashes: all } : wholeOne(copies, pick, opened.reason);
};
