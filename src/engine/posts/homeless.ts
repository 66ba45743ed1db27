import { radians } from '../../units/radians.ts';
import type { GateLayout } from '../layout.ts';
import type { Chain } from './chain.ts';
import type { KnownGate } from './gateSlots.ts';

/** A gate on a leg that is not there: its marks stand on one spot, or the line has no such leg. */
export const homeless = (
  { id, gate, opening, stands }: KnownGate,
  chains: readonly Chain[],
): GateLayout => {
  const stops = chains.find((chain) => chain.id === gate.line);
  const all = [...(stops?.stops ?? []), ...(stops?.doubled ?? [])];
  const at = all.find(({ vertex }) => vertex === gate.leg)?.at ?? { x: 0, y: 0 };
  return {
    id,
    line: gate.line,
    placed: false,
    opening,
    stands,
    posts: null,
    start: at,
    end: at,
    middle: at,
    bearing: radians(0),
    leaves: [],
    slides: [],
    stop: null,
    receiver: null,
  };
};
