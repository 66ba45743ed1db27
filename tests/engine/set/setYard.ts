import type { AsSet } from '../../../src/site/asSet.ts';
import type { Gate } from '../../../src/site/gate.ts';
import type { Hardware } from '../../../src/site/hardware.ts';
import type { LeafId } from '../../../src/site/ids.ts';
import { oneWidth } from '../../../src/site/oneWidth.ts';
import type { Site } from '../../../src/site/site.ts';
import { untoldPart } from '../../../src/site/untold.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

/** A part that takes or catches from low to high, planned between, all in inches. */
export const partOf = (
  kind: Hardware['kind'],
  [low, planned, high]: readonly [number, number, number],
  more: Partial<Hardware> = {},
): Hardware => ({
  ...untoldPart,
  kind,
  label: kind,
  takes: { low: inches(low), planned: inches(planned), high: inches(high) },
  from: 'measured',
  ...more,
});

interface Parts {
  readonly hinge: Hardware;
  readonly latch: Hardware;
  /** More parts of the site, which hang nowhere. */
  readonly spare?: Site['hardware'];
}

/** A fence of 50 ft with a gate of these leaves, hung on these parts, in its middle. */
export const gateOf = (leaves: readonly number[], { hinge, latch, spare }: Parts): Site => {
  const line = fence(bare, [
    [0, 0],
    [600, 0],
  ]);
  const site = gateOn(line, 0, { from: 'middle', offset: 0 }, leaves.length > 1 ? 2 : 1);
  const id = firstGate(site);
  const gate = site.gates[id];
  if (gate === undefined) throw new Error('no gate');
  const widths = Object.entries(gate.leaves).map(([leaf, own], n) => [
    leaf,
    { ...own, widths: oneWidth(inches(leaves[n] ?? 0)) },
  ]);
  const hung = latch.kind === 'latch' ? 'hardware:fork' : 'hardware:rod';
  return {
    ...site,
    gates: {
      [id]: { ...gate, latch: hung, leaves: Object.fromEntries(widths) as Gate['leaves'] },
    },
    hardware: { 'hardware:hinge': hinge, [hung]: latch, ...spare },
  };
};

/** What a crew found: widths at top and bottom, and whatever else was measured. */
export const found = (top: number, bottom: number | null, more: Partial<AsSet> = {}): AsSet => ({
  by: 'AB',
  on: '2026-11-25',
  top: inches(top),
  bottom: bottom === null ? null : inches(bottom),
  leans: { start: null, end: null },
  leaves: {},
  hinges: {},
  remark: '',
  ...more,
});

/** The only gate of a site. */
export const onlyGate = (site: Site): Gate => {
  const gate = site.gates[firstGate(site)];
  if (gate === undefined) throw new Error('no gate');
  return gate;
};

/** The ids of its leaves, the one nearer to the start of the leg first. */
export const leafIds = (site: Site): readonly LeafId[] =>
  Object.keys(onlyGate(site).leaves) as LeafId[];
