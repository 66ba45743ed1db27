import { sigmaOf } from '../../../src/engine/survey/sighting.ts';
import type { MarkId, ObservationId } from '../../../src/site/ids.ts';
import type { Mark } from '../../../src/site/mark.ts';
import type { Observation } from '../../../src/site/observation.ts';
import type { Site } from '../../../src/site/site.ts';
import { usualTrusts } from '../../../src/site/trusts.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { namedSite } from '../../store/namedSite.ts';
import { chanceOf, type Chance } from './chance.ts';
import { plainObserved } from './plainObserved.ts';

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** What was observed on a site, and where its marks truly are. */
export interface RandomNetwork {
  readonly site: Site;
  readonly truth: ReadonlyMap<MarkId, Place>;
}

/** What was observed, still without what it read. */
type Aim = Observation extends infer One
  ? One extends Observation
    ? Omit<One, 'length' | 'bearing' | 'distance' | 'x' | 'y'>
    : never
  : never;

const markOf = (n: number): MarkId => `mark:${n + 1}`;
const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);
const nothing = { trust: null, label: '' } as const;

/** Marks being set out one by one, no two nearer to each other than five feet, and what is aimed at. */
interface Yard {
  readonly places: Place[];
  readonly aims: Aim[];
}

const standsFree = ({ places }: Yard, place: Place): boolean =>
  places.every((other) => apart(place, other) > 60);

/** A house: four corners, all or some of them told to be square, opposite walls equally far apart. */
const addHouse = ({ places, aims }: Yard, chance: Chance): void => {
  const [long, deep, turn] = [
    chance.between(200, 700),
    chance.between(150, 500),
    chance.between(0, 6.28),
  ];
  const first = places.length;
  const [x, y] = [chance.between(-900, 900), chance.between(-900, 900)];
  const corners = [
    [0, 0],
    [long, 0],
    [long, deep],
    [0, deep],
  ] as const;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  for (const [u, v] of corners) places.push({ x: x + u * cos - v * sin, y: y + u * sin + v * cos });
  const corner = (n: number): MarkId => markOf(first + (n % 4));
  for (let n = 0; n < 4; n += 1) {
    if (chance.percent(70))
      aims.push({
        kind: 'square',
        at: corner(n),
        from: corner(n + 3),
        to: corner(n + 1),
        ...nothing,
      });
    aims.push({ kind: 'tape', from: corner(n), to: corner(n + 1), ...nothing });
  }
  if (chance.percent(50))
    aims.push({
      kind: 'parallel',
      at: corner(2),
      other: corner(3),
      from: corner(0),
      to: corner(1),
      ...nothing,
    });
};

/** A mark anywhere, in line with two others, or as far off a line as another. */
const addMark = (yard: Yard, chance: Chance): void => {
  const { places, aims } = yard;
  const own = markOf(places.length);
  const [a, b, c] = [0, 1, 2].map(() => chance.whole(0, places.length - 1)) as [
    number,
    number,
    number,
  ];
  const [from, to, other] = [places[a], places[b], places[c]];
  const share = chance.between(-0.4, 1.4);
  if (from !== undefined && to !== undefined && a !== b && chance.percent(20)) {
    const place = { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
    if (standsFree(yard, place)) {
      places.push(place);
      aims.push({ kind: 'straight', at: own, from: markOf(a), to: markOf(b), ...nothing });
      return;
    }
  }
  if (from && to && other && a !== b && b !== c && a !== c && chance.percent(20)) {
    const place = { x: other.x + share * (to.x - from.x), y: other.y + share * (to.y - from.y) };
    if (standsFree(yard, place)) {
      places.push(place);
      const [one, two] = [markOf(a), markOf(b)];
      aims.push({ kind: 'parallel', at: own, other: markOf(c), from: one, to: two, ...nothing });
      return;
    }
  }
  for (;;) {
    const place = { x: chance.between(-1500, 1500), y: chance.between(-1500, 1500) };
    if (!standsFree(yard, place)) continue;
    places.push(place);
    return;
  }
};

/** Tapes to nearby marks, few or many, and now and then something else. */
const addAims = ({ places, aims }: Yard, n: number, chance: Chance): void => {
  const own = places[n];
  if (own === undefined) return;
  const near = places
    .flatMap((place, m) => (m === n ? [] : [{ m, far: apart(place, own) }]))
    .toSorted((a, b) => a.far - b.far)
    .slice(0, 6)
    .map(({ m }) => m);
  const tapes = chance.pick([0, 1, 1, 2, 2, 2, 3, 3]);
  const to = near.toSorted(() => chance.between(-1, 1)).slice(0, tapes);
  for (const m of to) aims.push({ kind: 'tape', from: markOf(n), to: markOf(m), ...nothing });
  const [a, b] = [chance.pick(near), chance.pick(near)];
  if (chance.percent(15) && a !== b && apart(places[a]!, places[b]!) > 100)
    aims.push({ kind: 'offset', at: markOf(n), from: markOf(a), to: markOf(b), ...nothing });
  if (chance.percent(10))
    aims.push({ kind: 'bearing', from: markOf(n), to: markOf(a), ...nothing });
  if (chance.percent(10))
    aims.push({
      kind: 'fix',
      mark: markOf(n),
      accuracy: inches(chance.between(0.1, 0.2) * apart(own, places[near[0]!]!)),
      label: '',
    });
};

/** An aim with what was read there: what is true, and noise of its own sigma. */
const observed = (
  aim: Aim,
  truth: ReadonlyMap<MarkId, Place>,
  { chance, noise }: { readonly chance: Chance; readonly noise: number },
): Observation => {
  const at = (id: MarkId): Place => truth.get(id) ?? { x: 0, y: 0 };
  const full = { length: 1, bearing: 0, distance: 0, x: 0, y: 0, ...aim } as unknown as Observation;
  const [exact = 0, north = 0] = plainObserved(full, at);
  const rough = { ...full, ...(aim.kind === 'tape' && { length: exact }) } as Observation;
  const sigma = sigmaOf(rough, usualTrusts);
  const off = (): number => noise * sigma * chance.normal();
  switch (aim.kind) {
    case 'tape':
      return { ...aim, length: inches(Math.max(1, exact + off())) };
    case 'bearing': {
      const read = exact + off();
      return { ...aim, bearing: radians(Math.atan2(Math.sin(read), Math.cos(read))) };
    }
    case 'offset':
      return { ...aim, distance: inches(exact + off()) };
    case 'fix':
      return { ...aim, x: exact + off(), y: north + off() };
    default:
      return aim;
  }
};

/** Where a mark is drawn: up to 30 % of the way to its nearest neighbour off, whichever way. */
const sketched = (n: number, places: readonly Place[], chance: Chance): Place => {
  const own = places[n] ?? { x: 0, y: 0 };
  const nearest = Math.min(...places.flatMap((place, m) => (m === n ? [] : [apart(place, own)])));
  const [far, way] = [chance.between(0, 0.3) * nearest, chance.between(0, 2 * Math.PI)];
  return { x: own.x + far * Math.cos(way), y: own.y + far * Math.sin(way) };
};

/**
 * A network of 4 to 25 marks by a seed: houses, marks anywhere, in line and equally far off lines;
 * all kinds of observation, redundant here and loose there, now and then with fixed marks; the
 * readings with noise of their own sigma (`noise` 0 for exact ones), the sketch up to 30 % off; marks
 * that satellites found are drawn where they found them, to a tenth or two of the same way.
 */
export const randomNetwork = (seed: number, noise = 1): RandomNetwork => {
  const chance = chanceOf(seed);
  const count = chance.whole(4, 25);
  const yard: Yard = { places: [], aims: [] };
  if (chance.percent(70)) addHouse(yard, chance);
  while (yard.places.length < count) addMark(yard, chance);
  yard.places.forEach((_, n) => addAims(yard, n, chance));
  const truth = new Map(yard.places.map((place, n) => [markOf(n), place] as const));
  const pins = chance.percent(30) ? chance.whole(1, 3) : 0;
  const observations = yard.aims.map((aim, n): readonly [ObservationId, Observation] => [
    `observation:${n + 1}`,
    observed(aim, truth, { chance, noise }),
  ]);
  const fixes = new Map(
    observations.flatMap(([, seen]) => (seen.kind === 'fix' ? [[seen.mark, seen] as const] : [])),
  );
  const marks = yard.places.map((place, n): readonly [MarkId, Mark] => {
    const [id, fixed] = [markOf(n), n < pins];
    const { x, y } = fixed ? place : (fixes.get(id) ?? sketched(n, yard.places, chance));
    return [id, { x, y, label: '', fixed }];
  });
  const site: Site = {
    ...namedSite(`Network ${seed}`),
    marks: Object.fromEntries(marks),
    observations: Object.fromEntries(observations),
  };
  return { site, truth };
};
