import { contains } from '../../geometry/contains.ts';
import { boundsOf, boundsOverlap, expandBounds, type Bounds } from '../../geometry/bounds.ts';
import { radians } from '../../units/radians.ts';
import { leafTip } from '../gate/swing.ts';
import { newCarry, type Carry } from '../carry/carry.ts';
import type { GateLayout, Layout, LeafLayout } from '../layout.ts';
import type { Site } from '../../site/site.ts';
import { firstTouch, reachOf, type Touch } from './firstTouch.ts';
import type { Met, Obstacle } from './obstacle.ts';
import {
  featureObstacles,
  fenceObstacles,
  gateObstacles,
  nowhere,
  type FencesNear,
} from './obstaclesOf.ts';

/** Everything on a site that a leaf could meet. */
export interface Surroundings {
  readonly features: readonly Obstacle[];
  readonly fences: FencesNear;
  readonly gates: readonly Obstacle[];
}

/**
 * Everything that stands on a laid out site; what is as it was before is taken over. No piece itself: it holds
 * on to its carry, and with that to the layout before.
 */
export const surroundingsOf = (
  site: Site,
  layout: Pick<Layout, 'lines' | 'posts' | 'gates'>,
  carry: Carry = newCarry(),
): Surroundings => ({
  features: carry.shelf<readonly Obstacle[]>('features to meet').settle('', featureObstacles(site)),
  fences: fenceObstacles(layout, carry),
  gates: gateObstacles(layout, carry),
});

/** Where a leaf of a gate, counted from 0, first meets something. */
export interface Meeting extends Touch {
  readonly met: Met;
  readonly leaf: number;
}

/** More than any room that is asked for at a gate beyond what its leaves reach, inches. */
const roomAtGate = 240;

/** Bounds that hold all that a gate could meet, whichever way its leaves turn or roll. */
const groundOf = ({ start, end, stands, leaves, slides }: GateLayout): Bounds => {
  const places = [
    start,
    end,
    ...leaves.map(({ hinge }) => hinge),
    ...slides.flatMap(({ closed, stored }) => [closed.start, closed.end, stored.start, stored.end]),
  ];
  const reach = leaves.reduce((most, leaf) => Math.max(most, reachOf(leaf)), Math.abs(stands));
  return expandBounds(boundsOf(places) ?? nowhere, reach + roomAtGate);
};

/** All that `aroundGate` follows from: the very same things where none of it has changed. */
export const besideGate = (
  { features, fences, gates }: Surroundings,
  gate: GateLayout,
): readonly unknown[] => {
  const ground = groundOf(gate);
  const isNearBy = ({ bounds }: Obstacle) => boundsOverlap(ground, bounds);
  return [gate, ...features.filter(isNearBy), ...fences.lines(ground), ...gates.filter(isNearBy)];
};

/** What a gate could meet, near to it: not itself, and not the fence that it stands in. */
export const aroundGate = (
  { features, fences, gates }: Surroundings,
  gate: GateLayout,
): readonly Obstacle[] => {
  const ground = groundOf(gate);
  const isNearBy = ({ bounds }: { readonly bounds: Bounds }) => boundsOverlap(ground, bounds);
  return [
    ...features.filter(isNearBy),
    ...fences.fences(ground).filter((fence) => isNearBy(fence) && !fence.holds(gate)),
    ...gates.filter((other) => isNearBy(other) && other.met.id !== gate.id),
  ];
};

const isNear = ({ hinge }: LeafLayout, reach: number, bounds: Bounds): boolean =>
  hinge.x + reach >= bounds.minX &&
  hinge.x - reach <= bounds.maxX &&
  hinge.y + reach >= bounds.minY &&
  hinge.y - reach <= bounds.maxY;

/**
 * Fences stand on boundaries: a leaf that lies on one while closed passes over it only when it
 * opens to the outside, which only a boundary that closes can tell.
 */
const staysInside = (leaf: LeafLayout, { turned }: Touch, { met, ring }: Obstacle): boolean => {
  if (met.kind !== 'boundary' || turned > 0) return false;
  const opened = Math.min(Math.abs(leaf.turns), Math.PI / 2) * Math.sign(leaf.turns);
  return ring === null || contains(ring, leafTip(leaf, radians(opened)));
};

const firstOf = (leaves: readonly LeafLayout[], obstacle: Obstacle): Meeting | null => {
  let first: Meeting | null = null;
  leaves.forEach((leaf, n) => {
    if (!isNear(leaf, reachOf(leaf), obstacle.bounds)) return;
    const touch = firstTouch(leaf, obstacle);
    if (touch === null || staysInside(leaf, touch, obstacle)) return;
    if (first === null || touch.turned < first.turned) {
      first = { ...touch, met: obstacle.met, leaf: n };
    }
  });
  return first;
};

/** Where leaves first meet each of some obstacles, in the order of these; those they pass left out. */
export const meetings = (
  leaves: readonly LeafLayout[],
  obstacles: readonly Obstacle[],
): Meeting[] => obstacles.flatMap((obstacle) => firstOf(leaves, obstacle) ?? []);
