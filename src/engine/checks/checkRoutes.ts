import type { SitePoint } from '../../geometry/point.ts';
import { distance } from '../../geometry/distance.ts';
import { nearestOfSegments } from '../../geometry/nearestOfSegments.ts';
import { nearestOnSegment } from '../../geometry/nearestOnSegment.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { leastClearWidth } from '../../trade/clearWidth.ts';
import { highestSill, latchRoomSource, levelGround } from '../../trade/latchRoom.ts';
import { accessibleReach, besidePowered, fireWidth, poweredGate } from '../../trade/routes.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import { clearPassage } from '../gate/clearPassage.ts';
import { onePassage } from '../gate/onePassage.ts';
import { leafTip } from '../gate/swing.ts';
import { heightAt } from '../ground/heightAt.ts';
import type { GateLayout, LeafLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import type { LaidYard } from './laidYard.ts';
import { latchRooms, placesOn, standingIn, type GroundAtLatch } from '../sweep/latchRooms.ts';
import { aroundGate, type Surroundings } from '../sweep/meetings.ts';
import type { Obstacle } from '../sweep/obstacle.ts';
import { plantedAt, saidOf, type GateFlag } from './gateFlag.ts';
import { metName } from './metName.ts';
import { gateName } from './names.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

interface Passed {
  readonly site: Site;
  readonly laid: LaidLines;
  readonly gate: Gate;
  readonly layout: GateLayout;
  readonly say: (length: Inches) => string;
  readonly around: () => Surroundings;
}

const settle = (rule: string, message: string): GateFlag => ({ level: 'settle', rule, message });

const narrow = ({ gate, layout, say }: Passed): GateFlag[] => {
  const [clear, least] = [onePassage(gate, layout), leastClearWidth.width];
  if (clear >= least - slack) return [];
  const open = layout.leaves.length > 1 ? phrase`one leaf` : phrase`the gate`;
  return [
    settle(
      'narrow on an accessible route',
      phrase`${say(clear)} is clear with ${open} open: on an accessible route expected ${say(least)} at least (${leastClearWidth.source.text}).`,
    ),
  ];
};

const outOfReach = ({ gate: { latchHeight: at }, say }: Passed): GateFlag[] => {
  const { low, high, source } = accessibleReach;
  if (at === null || (at >= low - slack && at <= high + slack)) return [];
  return [
    settle(
      'latch out of reach',
      phrase`the latch is ${say(at)} over the ground: on an accessible route expected ${say(low)} to ${say(high)} (${source.text}); gates of pools may differ.`,
    ),
  ];
};

const highSill = ({ gate: { threshold }, say }: Passed): GateFlag[] => {
  const { length, source } = highestSill;
  if (threshold === null || threshold <= length + slack) return [];
  return [
    settle(
      'sill on an accessible route',
      phrase`its sill stands up ${say(threshold)}: on an accessible route expected ${say(length)} at most (${source.text}).`,
    ),
  ];
};

/** A place of the ground at a latch, with its height where shots tell it; inches. */
interface Place {
  readonly at: SitePoint;
  readonly height: number;
}

const riseTo = (a: Place, b: Place): number => Math.abs(a.height - b.height) / distance(a.at, b.at);

const besideLatch = ({ site, layout, around, say }: Passed, room: GroundAtLatch): GateFlag[] => {
  const met = standingIn(room, aroundGate(around(), layout));
  if (met.length === 0) return [];
  const { deep, beyond } = room.asked;
  const where =
    room.side === 'pull' ? phrase`side to which it opens` : phrase`side from which it is pushed`;
  const names = joined([...new Set(met.map((one) => metName(site, one)))], phrase` and `);
  return [
    settle(
      'no room at the latch',
      phrase`on the ${where} ${names} is nearer than ${say(deep)} out and ${say(beyond)} past the latch: expected that ground clear (${latchRoomSource.text}).`,
    ),
  ];
};

/** The slope of a plane through a place, the next one along and the next one out: rise over run. */
const slopeBy = (from: Place, along: Place, out: Place): number =>
  Math.hypot(riseTo(from, along), riseTo(from, out));

/** The steepest on nine places; null where the shots do not tell of all. */
const steepestOn = ({ laid: { ground } }: Passed, room: GroundAtLatch): number | null => {
  if (ground === null) return null;
  const places = placesOn(room).flatMap((at): Place[] => {
    const height = heightAt(ground, at);
    return height === null ? [] : [{ at, height }];
  });
  if (places.length < 9) return null;
  let steepest = 0;
  // three out at each of three along
  places.forEach((from, n) => {
    for (const to of places.slice(n + 1)) steepest = Math.max(steepest, riseTo(from, to));
    const [along, out] = [places[n < 6 ? n + 3 : n - 3], places[n % 3 < 2 ? n + 1 : n - 1]];
    if (along === undefined || out === undefined) return;
    steepest = Math.max(steepest, slopeBy(from, along, out));
  });
  return steepest;
};

const steep = (passed: Passed, rooms: readonly GroundAtLatch[]): GateFlag[] => {
  const slopes = rooms.flatMap((room) => steepestOn(passed, room) ?? []);
  const most = Math.max(0, ...slopes);
  if (most <= levelGround.slope + 1e-9) return [];
  return [
    settle(
      'steep at an accessible gate',
      phrase`the ground before it rises by ${(100 * most).toFixed(1)} %: on an accessible route expected ${(100 * levelGround.slope).toFixed(1)} % at most (${levelGround.source.text}).`,
    ),
  ];
};

/** What of an accessible gate nobody can look at on a plan, or has told. */
const unseen = ({ gate, layout, laid }: Passed, rooms: readonly GroundAtLatch[]): GateFlag => {
  const things = [
    ...(rooms.length === 0 && layout.leaves.length > 0 ? [phrase`room beside the latch`] : []),
    ...(laid.ground === null ? [phrase`slope of the ground`] : []),
    ...(gate.latchHeight === null && gate.way.kind !== 'gap' ? [phrase`height of the latch`] : []),
    ...(gate.threshold === null ? [phrase`a sill`] : []),
    phrase`what stands out from the leaf`,
  ];
  const last = things.at(-1) ?? '';
  const list = things.length > 1 ? phrase`${joined(things.slice(0, -1), ', ')} and ${last}` : last;
  return {
    level: 'caution',
    rule: 'accessible route',
    message:
      things.length > 1
        ? phrase`on an accessible route: ${list} are not looked at here; measure them (2010 ADA 404.2).`
        : phrase`on an accessible route: ${list} is not looked at here; measure them (2010 ADA 404.2).`,
  };
};

const accessible = (passed: Passed): GateFlag[] => {
  const { gate, layout, laid } = passed;
  const rooms = latchRooms(gate, layout, laid.posts);
  return [
    ...narrow(passed),
    ...outOfReach(passed),
    ...highSill(passed),
    ...rooms.flatMap((room) => besideLatch(passed, room)),
    ...steep(passed, rooms),
    unseen(passed, rooms),
  ];
};

const forFire = ({ gate, layout, say }: Passed): GateFlag[] => {
  const { clear } = clearPassage(gate, layout);
  if (clear >= fireWidth.length - slack) return [];
  return [
    settle(
      'too narrow for fire engines',
      phrase`${say(clear)} is clear with this gate open: for fire engines expected ${say(fireWidth.length)} at least (${fireWidth.source.text}).`,
    ),
  ];
};

/** How near to a leaf that stands open, flat against it, something is. */
const gapTo = (leaf: LeafLayout, { edges, disc }: Obstacle): number => {
  const end = leafTip(leaf, leaf.turns);
  const open = { start: leaf.hinge, end };
  const half = leaf.thickness / 2;
  const gaps = edges.map((edge) => nearestOfSegments(open, edge).distance);
  if (disc !== null) gaps.push(nearestOnSegment(disc.centre, open).distance - disc.radius);
  return Math.min(...gaps) - half;
};

/** Walls, trunks and other fence near to a powered leaf that stands open: somebody can be caught there. */
const caught = ({ site, layout, around, say }: Passed): GateFlag[] => {
  if (layout.leaves.length === 0 || !layout.placed) return [];
  const { length, source } = besidePowered;
  const fixed = aroundGate(around(), layout).filter(
    ({ met }) => met.kind === 'building' || met.kind === 'tree' || met.kind === 'fence',
  );
  const nearest = new Map<string, number>();
  for (const one of fixed) {
    const gap = Math.max(0, Math.min(...layout.leaves.map((leaf) => gapTo(leaf, one))));
    const name = metName(site, one.met);
    if (gap < length - slack) nearest.set(name, Math.min(gap, nearest.get(name) ?? gap));
  }
  return [...nearest].map(([name, gap]) => {
    const message = phrase`open, ${name} is ${say(inches(gap))} from a leaf that a motor moves, and somebody can be caught between: expected ${say(length)} at least (${source.text}).`;
    return settle('powered leaf near something', message);
  });
};

const powered = (passed: Passed): GateFlag[] => [
  ...caught(passed),
  {
    level: 'caution',
    rule: 'powered gate',
    message: phrase`${poweredGate.text} (${poweredGate.source.text}).`,
  },
];

const flagsFor = (passed: Passed): GateFlag[] => [
  ...(passed.gate.route === 'accessible' ? accessible(passed) : []),
  ...(passed.gate.route === 'fire' ? forFire(passed) : []),
  ...(passed.gate.powered ? powered(passed) : []),
];

/**
 * What gates on an accessible route or a road for fire engines, and gates that a motor moves, are compared
 * with: clear passage, reach of the latch, sill, room and slope of the ground
 * at the latch; what is near to a powered leaf that stands open.
 */
export const checkRoutes = (site: Site, laid: LaidYard): Flag[] => {
  const say = (length: Inches): string => formatLength(length, fineStyle(site.lengths));
  const { around } = laid;
  return Object.values<GateLayout>(laid.gates).flatMap((layout) => {
    const gate = site.gates[layout.id];
    if (gate === undefined) return [];
    const flags = flagsFor({ site, laid, gate, layout, say, around });
    return plantedAt(layout, saidOf(gateName(site, layout.id), flags));
  });
};
