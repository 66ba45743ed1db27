import type { Gate } from '../../src/site/gate.ts';
import type { GateWay } from '../../src/site/gateWay.ts';
import type { Site } from '../../src/site/site.ts';
import { setGateWay } from '../../src/site/edits/setGateWay.ts';
import { inches } from '../../src/units/inches.ts';
import { radians } from '../../src/units/radians.ts';
import { bare, fence, firstGate, gateOn } from './plainYard.ts';

export const swing: GateWay = { kind: 'swing', turns: radians(Math.PI / 2) };
export const centreStop = {
  kind: 'centre stop',
  stop: inches(4),
  turns: radians(Math.PI / 2),
} as const satisfies GateWay;
export const gap: GateWay = { kind: 'gap', clear: inches(60) };
export const cantilever = {
  kind: 'cantilever',
  overlap: inches(6),
  counterbalance: inches(60),
  rollers: inches(54),
  behind: inches(6),
  stores: 'start',
} as const satisfies GateWay;

/**
 * One fence of 50 ft along the x axis with a gate whose opening is in its middle: one leaf of 44 in
 * or two of 56 7/8 in before its way was changed, which keeps the opening.
 */
export const wayYard = (way: GateWay, leaves: 1 | 2 = 1, change: Partial<Gate> = {}): Site => {
  const line = fence(bare, [
    [0, 0],
    [600, 0],
  ]);
  const site = gateOn(line, 0, { from: 'middle', offset: 0 }, leaves);
  const id = firstGate(site);
  const parts = { hinge: 'hardware:hinge', latch: 'hardware:rod' } as const;
  const set = setGateWay(site, id, way, parts);
  const gate = set.gates[id];
  if (gate === undefined) throw new Error('no gate');
  return { ...set, gates: { [id]: { ...gate, ...change } } };
};
