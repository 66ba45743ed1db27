import type { Gate } from '../../site/gate.ts';
import type { GateId, HardwareId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import type { Site } from '../../site/site.ts';
import { hingeSets } from '../../trade/hingeSets.ts';
import type { Inches } from '../../units/inches.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { LoadLine } from '../loadLine.ts';
import { grouped } from './grouped.ts';
import { asItIs, phrase } from '../../phrases/phrase.ts';

/** What a gate has parts of, as codes begin. */
type PartOf = 'gate leaf' | 'hinge set' | 'latch' | 'closer';

interface Part {
  readonly is: PartOf;
  /** What the site calls it; null for a leaf. */
  readonly label: string | null;
  readonly each: Inches | null;
  readonly rule: string;
  readonly gate: GateId;
}

/** Leaves that latch to a stop have a latch each. */
const latchesOf = ({ way, latch }: Gate): HardwareId[] => {
  if (latch === null) return [];
  return way.kind === 'centre stop' ? [latch, latch] : [latch];
};

const latchRule = ({ way }: Gate): string =>
  way.kind === 'centre stop' ? phrase`One a leaf, each to the stop.` : phrase`One a gate.`;

const partsOf = (id: GateId, site: Site): Part[] => {
  const gate = site.gates[id];
  if (gate === undefined) return [];
  const leaves = leavesOf(gate);
  const part = (is: PartOf, by: HardwareId, rule: string): Part => {
    return { is, label: site.hardware[by]?.label ?? by, each: null, rule, gate: id };
  };
  return [
    ...leaves.map((leaf): Part => {
      const rule = phrase`One a leaf, by its measured width.`;
      return { is: 'gate leaf', label: null, each: leafWidth(leaf), rule, gate: id };
    }),
    ...leaves.flatMap(({ hinge }) => {
      if (hinge === null) return [];
      const set = part('hinge set', hinge, phrase`${hingeSets.perLeaf} sets a leaf.`);
      return Array.from({ length: hingeSets.perLeaf }, () => set);
    }),
    ...latchesOf(gate).map((latch) => part('latch', latch, latchRule(gate))),
    ...leaves.flatMap(() =>
      gate.closer === null ? [] : part('closer', gate.closer, phrase`One a leaf.`),
    ),
  ];
};

/** What a list calls a part. */
const itemOf = ({ is, label }: Part): string => {
  const name = asItIs(label ?? '');
  switch (is) {
    case 'gate leaf':
      return phrase`Gate leaf`;
    case 'hinge set':
      return phrase`Hinge set, ${name}`;
    case 'latch':
      return phrase`Latch, ${name}`;
    case 'closer':
      return phrase`Closer, ${name}`;
  }
};

/** What it is and its name, the same in every language. */
const keyOf = ({ is, label }: Part): string => (label === null ? is : `${is}, ${label}`);

/** A part by its name in small letters, a leaf by its width. */
const codeOf = (part: Part): string =>
  `${keyOf(part).toLowerCase()}${part.each === null ? '' : ` ${part.each}in`}`;

const inTurn = (a: Part, b: Part): number => {
  const [one, other] = [keyOf(a), keyOf(b)];
  return one < other ? -1 : one > other ? 1 : (b.each ?? 0) - (a.each ?? 0);
};

/** Leaves, hinge sets and latches of gates; those of one item and size on one line. */
export const countGates = (gates: readonly GateId[], site: Site): LoadLine[] => {
  const parts = gates.flatMap((id) => partsOf(id, site));
  return grouped(parts, (part) => `${keyOf(part)}|${part.each}`)
    .toSorted(([a], [b]) => (a === undefined || b === undefined ? 0 : inTurn(a, b)))
    .flatMap((same): LoadLine[] => {
      const [first] = same;
      if (first === undefined) return [];
      const { each, rule } = first;
      const of = { posts: [], lines: [], gates: [...new Set(same.map(({ gate }) => gate))] };
      return [
        {
          part: 'gates',
          code: codeOf(first),
          item: itemOf(first),
          count: same.length,
          unit: 'each',
          each,
          sold: null,
          rule,
          source: phrase`company rule`,
          of,
        },
      ];
    });
};
