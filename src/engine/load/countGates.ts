import type { Gate } from '../../site/gate.ts';
import type { GateId, HardwareId } from '../../site/ids.ts';
import { leafWidth } from '../../site/leafWidth.ts';
import type { Site } from '../../site/site.ts';
import { hingeSets } from '../../trade/hingeSets.ts';
import type { Inches } from '../../units/inches.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { LoadLine } from '../loadLine.ts';
import { grouped } from './grouped.ts';

interface Part {
  readonly item: string;
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
  way.kind === 'centre stop' ? 'One a leaf, each to the stop.' : 'One a gate.';

const partsOf = (id: GateId, site: Site): Part[] => {
  const gate = site.gates[id];
  if (gate === undefined) return [];
  const leaves = leavesOf(gate);
  const named = (part: HardwareId): string => site.hardware[part]?.label ?? part;
  const part = (item: string, each: Inches | null, rule: string): Part => ({
    item,
    each,
    rule,
    gate: id,
  });
  return [
    ...leaves.map((leaf) =>
      part('Gate leaf', leafWidth(leaf), 'One a leaf, by its measured width.'),
    ),
    ...leaves.flatMap(({ hinge }) => {
      if (hinge === null) return [];
      const set = part(`Hinge set, ${named(hinge)}`, null, `${hingeSets.perLeaf} sets a leaf.`);
      return Array.from({ length: hingeSets.perLeaf }, () => set);
    }),
    ...latchesOf(gate).map((latch) => part(`Latch, ${named(latch)}`, null, latchRule(gate))),
    ...leaves.flatMap(() =>
      gate.closer === null ? [] : part(`Closer, ${named(gate.closer)}`, null, 'One a leaf.'),
    ),
  ];
};

/** A part by its name in small letters, a leaf by its width. */
const codeOf = (item: string, each: Inches | null): string =>
  `${item.toLowerCase()}${each === null ? '' : ` ${each}in`}`;

/** Leaves, hinge sets and latches of gates; those of one item and size on one line. */
export const countGates = (gates: readonly GateId[], site: Site): LoadLine[] => {
  const parts = gates.flatMap((id) => partsOf(id, site));
  return grouped(parts, ({ item, each }) => `${item}|${each}`)
    .flatMap((same): LoadLine[] => {
      const [first] = same;
      if (first === undefined) return [];
      const { item, each, rule } = first;
      const of = { posts: [], lines: [], gates: [...new Set(same.map(({ gate }) => gate))] };
      const code = codeOf(item, each);
      return [
        {
          part: 'gates',
          code,
          item,
          count: same.length,
          unit: 'each',
          each,
          sold: null,
          rule,
          source: 'company rule',
          of,
        },
      ];
    })
    .toSorted((a, b) =>
      a.item < b.item ? -1 : a.item > b.item ? 1 : (b.each ?? 0) - (a.each ?? 0),
    );
};
