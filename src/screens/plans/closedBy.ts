import type { GateLayout } from '../../engine/layout.ts';
import { addHardware } from '../../site/edits/addHardware.ts';
import { setGateWay } from '../../site/edits/setGateWay.ts';
import { entry } from '../../site/entry.ts';
import type { Gate } from '../../site/gate.ts';
import { leafCounts, type GateWay } from '../../site/gateWay.ts';
import type { Parts } from '../../site/parts.ts';
import type { Site } from '../../site/site.ts';
import { untoldGate } from '../../site/untold.ts';
import { slideFor } from '../../trade/slides.ts';
import { inches } from '../../units/inches.ts';
import { usualParts } from './gatePlan.ts';

const turnsOf = ({ way }: Gate) => ('turns' in way ? way.turns : untoldGate.way.turns);

/**
 * A way of closing for a gate to begin with, by its kind: a stop as wide as a terminal post, a slide
 * for the opening that is there, a gap of that width. Everything in it can be changed.
 */
export const wayToBegin = (kind: GateWay['kind'], site: Site, laid: GateLayout): GateWay => {
  const gate = entry(site, 'gates', laid.id);
  const { target } = laid.opening;
  switch (kind) {
    case 'swing':
      return { kind, turns: turnsOf(gate) };
    case 'centre stop': {
      const { spec } = entry(site, 'lines', gate.line);
      return { kind, stop: entry(site, 'specs', spec).terminalPost.od, turns: turnsOf(gate) };
    }
    case 'cantilever': {
      const count = Object.keys(gate.leaves).length === 2 ? 2 : 1;
      const { overlap, counterbalance, rollers, behind } = slideFor(inches(target / count));
      return { kind, overlap, counterbalance, rollers, behind, stores: gate.hingedAt };
    }
    case 'gap':
      return { kind, clear: target };
  }
};

/**
 * Lets a gate close its opening in another way, as `setGateWay`; hinges and a latch that it needs
 * and does not have are the usual ones for its opening, with the figures of the book. RangeError as
 * there.
 */
export const closedBy = (site: Site, laid: GateLayout, way: GateWay, book: Parts): Site => {
  const gate = entry(site, 'gates', laid.id);
  const leaves = Object.values(gate.leaves);
  const count = leaves.length === 2 || leafCounts[way.kind][0] === 2 ? 2 : 1;
  const usual = usualParts(count, laid.opening.target, book);
  const hung = leaves.find(({ hinge }) => hinge !== null)?.hinge ?? null;
  const turning = way.kind === 'swing' || way.kind === 'centre stop';
  const needed = [
    ...(turning && hung === null ? [usual.hinge] : []),
    ...(way.kind !== 'gap' && gate.latch === null ? [usual.latch] : []),
  ];
  const stocked = needed.reduce((so, part) => addHardware(so, part.id, part.hardware), site);
  return setGateWay(stocked, laid.id, way, {
    hinge: hung ?? usual.hinge.id,
    latch: gate.latch ?? usual.latch.id,
  });
};
