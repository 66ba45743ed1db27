import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { principalAngle } from '../../geometry/principalAngle.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { GateLayout, Layout, LeafLayout } from '../layout.ts';
import {
  aroundGate,
  meetings,
  surroundingsOf,
  type Meeting,
  type Surroundings,
} from './meetings.ts';
import { isSolid } from './obstacle.ts';

/** How far the leaves of a gate may open to one side. */
export interface FreeSwing {
  /** Radians from closed, at most half a round. */
  readonly free: Radians;
  /** What stops them there; null where nothing does. */
  readonly stop: Meeting | null;
  /** Where they first swing over a boundary on their way; null where they do not. */
  readonly over: Meeting | null;
}

/** A leaf that turns by half a round to a side, as seen along the leg. */
const turnedTo = (leaf: LeafLayout, gate: GateLayout, side: Gate['opens']): LeafLayout => {
  const atStart = Math.cos(leaf.closed - gate.bearing) > 0;
  const turns = radians((side === 'left') === atStart ? Math.PI : -Math.PI);
  return { ...leaf, turns, open: principalAngle(leaf.closed + turns) };
};

const sooner = (a: Meeting | null, b: Meeting): Meeting =>
  a === null || b.turned < a.turned ? b : a;

const towards = (side: Gate['opens'], gate: GateLayout, around: Surroundings): FreeSwing => {
  const leaves = gate.leaves.map((leaf) => turnedTo(leaf, gate, side));
  const met = meetings(leaves, aroundGate(around, gate));
  const stop = met.filter(isSolid).reduce<Meeting | null>(sooner, null);
  const free = stop?.turned ?? radians(Math.PI);
  const over = met
    .filter((one) => one.met.kind === 'boundary' && one.turned <= free)
    .reduce<Meeting | null>(sooner, null);
  return { free, stop, over };
};

/**
 * How far the leaves of a gate may open to the left and to the right of its leg until the first of
 * them meets a wall, a trunk, other fence or the ground of another gate's leaves. The fence that
 * it stands in stops nothing: a leaf may be laid back against it.
 */
export const freeSwings = (
  gate: GateLayout,
  around: Surroundings,
): Readonly<Record<Gate['opens'], FreeSwing>> => ({
  left: towards('left', gate, around),
  right: towards('right', gate, around),
});

/** As `freeSwings`, among everything that stands on a site. */
export const mayOpen = (
  site: Site,
  layout: Pick<Layout, 'lines' | 'posts' | 'gates'>,
  gate: GateLayout,
): Readonly<Record<Gate['opens'], FreeSwing>> => freeSwings(gate, surroundingsOf(site, layout));
