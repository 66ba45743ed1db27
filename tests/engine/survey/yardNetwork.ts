import { bearing } from '../../../src/geometry/bearing.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { networks, type Network } from '../../../src/engine/survey/networks.ts';
import { sigmaOf, type Sighting, type Spot } from '../../../src/engine/survey/sighting.ts';
import type { MarkId, ObservationId } from '../../../src/site/ids.ts';
import type { Observation } from '../../../src/site/observation.ts';
import { usualTrusts } from '../../../src/site/trusts.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { chanceOf, type Chance } from './chance.ts';

/** Where the marks of an invented yard truly are. */
export type Truth = ReadonlyMap<MarkId, SitePoint>;

const put = (truth: Truth, id: MarkId): SitePoint => {
  const at = truth.get(id);
  if (at === undefined) throw new Error(`${id}: expected a mark of the yard`);
  return at;
};

/** A tape between two marks that reads what is true. */
export const trueTape = (truth: Truth, from: MarkId, to: MarkId): Observation => ({
  kind: 'tape',
  from,
  to,
  length: inches(distance(put(truth, from), put(truth, to))),
  trust: null,
  label: '',
});

/** The bearing of the way between two marks, true. */
export const trueBearing = (truth: Truth, from: MarkId, to: MarkId): Observation => ({
  kind: 'bearing',
  from,
  to,
  bearing: bearing(put(truth, from), put(truth, to)),
  trust: null,
  label: '',
});

/** How far a mark is off the line through two others, true. */
export const trueOffset = (truth: Truth, at: MarkId, from: MarkId, to: MarkId): Observation => {
  const [p, a, b] = [put(truth, at), put(truth, from), put(truth, to)];
  const off = ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / distance(a, b);
  return { kind: 'offset', at, from, to, distance: inches(off), trust: null, label: '' };
};

/** Observations with their ids and their trust. */
export const sighted = (all: readonly Observation[]): Sighting[] =>
  all.map((seen, n) => ({
    id: `observation:${String(n + 1).padStart(4, '0')}` as ObservationId,
    seen,
    sigma: sigmaOf(seen, usualTrusts),
  }));

/** A reading that is off by chance, as much as it is trusted. */
export const blurred = (seen: Observation, { normal }: Chance): Observation => {
  const off = normal() * sigmaOf(seen, usualTrusts);
  switch (seen.kind) {
    case 'tape':
      return { ...seen, length: inches(Math.max(1, seen.length + off)) };
    case 'offset':
      return { ...seen, distance: inches(seen.distance + off) };
    case 'bearing':
      return { ...seen, bearing: radians(seen.bearing + off) };
    case 'fix':
      return { ...seen, x: seen.x + off, y: seen.y + normal() * seen.accuracy };
    default:
      // what is told square, straight or parallel has no figure: the ground is off instead
      return seen;
  }
};

/** Marks drawn so much off where they are, at most, in inches along x and y; some of them fixed in place. */
export const sketchOf = (
  truth: Truth,
  rough: number,
  { between }: Chance,
  fixed: readonly MarkId[] = [],
): Map<MarkId, Spot> =>
  new Map(
    [...truth].map(([id, { x, y }]): [MarkId, Spot] => {
      if (fixed.includes(id)) return [id, { x, y, fixed: true }];
      return [id, { x: x + between(-rough, rough), y: y + between(-rough, rough), fixed: false }];
    }),
  );

/** All of it as one network, whether or not its parts hang together. */
export const networkOf = (spots: Network['spots'], seen: readonly Observation[]): Network => ({
  spots,
  sightings: sighted(seen),
});

/** The network with the most readings among those that a site has. */
export const largestNetwork = (network: Network): Network => {
  const [first = network, ...others] = networks(network.spots, network.sightings);
  return others.reduce((a, b) => (b.sightings.length > a.sightings.length ? b : a), first);
};

const name = (kind: string, n: number): MarkId => `mark:${kind}${n}`;

/** A house of four corners or six, about a lot of four to eight fence corners; inches. */
export const yardTruth = (
  seed: number,
): { readonly truth: Truth; readonly house: number; readonly fence: number } => {
  const { between, percent, whole } = chanceOf(seed);
  const [wide, deep] = [between(300, 600), between(240, 480)];
  const ell = percent(40);
  const [inX, inY] = [wide * between(0.35, 0.65), deep * between(0.35, 0.65)];
  const plain = [
    [0, 0],
    [wide, 0],
    [wide, deep],
    [0, deep],
  ];
  const corners = ell
    ? [
        [0, 0],
        [wide, 0],
        [wide, inY],
        [inX, inY],
        [inX, deep],
        [0, deep],
      ]
    : plain;
  const fence = whole(4, 8);
  const turned = between(0, 2 * Math.PI);
  const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
  // no minus zero: a document has none
  const place = (x: number, y: number): SitePoint => ({
    x: cos * x - sin * y + 0,
    y: sin * x + cos * y + 0,
  });
  const around = Array.from({ length: fence }, (_, n) => {
    const angle = (2 * Math.PI * (n + between(0, 0.5))) / fence;
    const [rx, ry] = [wide * between(0.8, 1.2), deep * between(0.8, 1.2)];
    return place(wide / 2 + rx * Math.cos(angle), deep / 2 + ry * Math.sin(angle));
  });
  const truth = new Map<MarkId, SitePoint>([
    ...corners.map(([x = 0, y = 0], n) => [name('h', n), place(x, y)] as const),
    ...around.map((at, n) => [name('f', n), at] as const),
  ]);
  return { truth, house: corners.length, fence };
};

/**
 * What a crew tapes of such a yard, true: the sides of the house and its diagonals, the legs of the
 * fence, and for each fence corner ties from so many house corners, the nearest first.
 */
export const yardTapes = (
  seed: number,
  ties: number,
): {
  readonly truth: Truth;
  readonly tapes: readonly Observation[];
  readonly house: number;
  readonly fence: number;
} => {
  const { truth, house, fence } = yardTruth(seed);
  const tape = (a: MarkId, b: MarkId): Observation => trueTape(truth, a, b);
  const corners = Array.from({ length: house }, (_, n) => name('h', n));
  const sides = corners.map((id, n) => tape(id, name('h', (n + 1) % house)));
  const across = corners.flatMap((id, n) =>
    corners
      .slice(n + 2)
      .flatMap((other) => (n === 0 && other === corners.at(-1) ? [] : [tape(id, other)])),
  );
  const legs = Array.from({ length: fence }, (_, n) =>
    tape(name('f', n), name('f', (n + 1) % fence)),
  );
  const tied = Array.from({ length: fence }, (_, n) => {
    const id = name('f', n);
    const nearest = corners.toSorted(
      (a, b) => distance(put(truth, a), put(truth, id)) - distance(put(truth, b), put(truth, id)),
    );
    return nearest.slice(0, ties).map((corner) => tape(corner, id));
  }).flat();
  return { truth, house, fence, tapes: [...sides, ...across, ...legs, ...tied] };
};
