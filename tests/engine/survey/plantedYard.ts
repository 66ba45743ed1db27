import { newCarry } from '../../../src/engine/carry/carry.ts';
import { sigmaOf } from '../../../src/engine/survey/sighting.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { surveyOf } from '../../../src/engine/survey/surveyOf.ts';
import type { MarkId, ObservationId } from '../../../src/site/ids.ts';
import type { Mark } from '../../../src/site/mark.ts';
import type { Observation, ObservationOf } from '../../../src/site/observation.ts';
import type { Site } from '../../../src/site/site.ts';
import { usualTrusts } from '../../../src/site/trusts.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';
import { chanceOf, type Chance } from './chance.ts';

interface Place {
  readonly x: number;
  readonly y: number;
}

/** What goes wrong with a tape: one foot misread, two digits told the wrong way round, ten feet dropped. */
const blunders = ['a foot misread', 'digits exchanged', 'ten feet dropped'] as const;
type Blunder = (typeof blunders)[number];

/** A yard with one reading in it that is wrong. */
export interface PlantedYard {
  /** With that reading right. */
  readonly right: Site;
  readonly site: Site;
  readonly planted: ObservationId;
  /** The error over the sigma of its tape. */
  readonly sigmas: number;
}

const apart = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);
const house = (n: number): MarkId => `mark:h${n % 4}`;
const post = (n: number): MarkId => `mark:p${n}`;

/** A house of 20 to 60 ft by 16 to 45 ft, each corner out by an inch or so: no house is quite square. */
const houseOf = (chance: Chance): readonly Place[] => {
  const [wide, deep] = [chance.between(240, 720), chance.between(192, 540)];
  const corners = [
    { x: 0, y: 0 },
    { x: wide, y: 0 },
    { x: wide, y: deep },
    { x: 0, y: deep },
  ];
  return corners.map(({ x, y }) => ({ x: x + chance.normal(), y: y + chance.normal() }));
};

/** Fence corners about the house, 4 to 8 of them, 10 to 50 ft off it. */
const fenceOf = (corners: readonly Place[], chance: Chance): readonly Place[] => {
  const [, , far = { x: 0, y: 0 }] = corners;
  const count = chance.whole(4, 8);
  const start = chance.between(0, 2 * Math.PI);
  return Array.from({ length: count }, (_, n) => {
    const way = start + (2 * Math.PI * (n + chance.between(-0.25, 0.25))) / count;
    const off = chance.between(120, 600);
    return {
      x: far.x / 2 + (far.x / 2 + off) * Math.cos(way),
      y: far.y / 2 + (far.y / 2 + off) * Math.sin(way),
    };
  });
};

const nothing = { trust: null, label: '' } as const;

/** What is read on a tape: the true length, noise of the tape's own sigma, to the eighth of an inch. */
const tapeBetween = (
  [from, to]: readonly [MarkId, MarkId],
  places: ReadonlyMap<MarkId, Place>,
  chance: Chance,
): Observation => {
  const length = apart(places.get(from)!, places.get(to)!);
  const exact = { kind: 'tape', from, to, length: inches(length), ...nothing } as const;
  const read = length + sigmaOf(exact, usualTrusts) * chance.normal();
  return { ...exact, length: inches(Math.max(1, Math.round(read * 8) / 8)) };
};

/** Which tapes are pulled: the house, the legs of the fence, and two or three ties to each fence corner. */
const pullsOf = (
  places: ReadonlyMap<MarkId, Place>,
  { posts, diagonals, chance }: { posts: number; diagonals: boolean; chance: Chance },
): (readonly [MarkId, MarkId])[] => {
  const corners = [0, 1, 2, 3].map(house);
  const pulls: (readonly [MarkId, MarkId])[] = corners.map((id, n) => [id, house(n + 1)]);
  if (diagonals) pulls.push([house(0), house(2)], [house(1), house(3)]);
  for (let n = 0; n < posts; n += 1) {
    const own = places.get(post(n))!;
    const near = corners.toSorted(
      (a, b) => apart(places.get(a)!, own) - apart(places.get(b)!, own),
    );
    for (const id of near.slice(0, chance.pick([2, 3]))) pulls.push([id, post(n)]);
    pulls.push([post(n), post((n + 1) % posts)]);
  }
  return pulls;
};

/** A wrong reading for a right one; null where the blunder would not show in this one. */
const wronged = (length: number, blunder: Blunder, chance: Chance): number | null => {
  const [feet, rest] = [Math.floor(length / 12), length % 12];
  switch (blunder) {
    case 'a foot misread':
      return length + chance.pick([-12, 12]);
    case 'ten feet dropped':
      return length - 120;
    case 'digits exchanged': {
      const digits = [...String(feet)];
      const [tens, ones] = [digits.at(-2), digits.at(-1)];
      if (tens === undefined || ones === undefined || tens === ones) return null;
      return Number([...digits.slice(0, -2), ones, tens].join('')) * 12 + rest;
    }
  }
};

/** The least error that is planted, over the sigma of its tape. */
const leastSigmas = 12;

const plant = (
  tapes: readonly (readonly [ObservationId, ObservationOf<'tape'>])[],
  chance: Chance,
) => {
  for (;;) {
    const [id, tape] = chance.pick(tapes);
    const blunder = chance.pick(blunders);
    const length = wronged(tape.length, blunder, chance);
    const sigmas =
      length === null ? 0 : Math.abs(length - tape.length) / sigmaOf(tape, usualTrusts);
    if (length === null || length < 12 || sigmas < leastSigmas) continue;
    return { id, sigmas, tape: { ...tape, length: inches(length) } };
  }
};

/** Marks as a hand draws them: each up to a tenth of the house's width off, the whole yard turned. */
const drawnAt = (places: ReadonlyMap<MarkId, Place>, chance: Chance): Record<MarkId, Mark> => {
  const turn = chance.between(-0.2, 0.2);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const rough = apart(places.get(house(0))!, places.get(house(1))!) / 10;
  const marks = [...places].map(([id, { x, y }]): readonly [MarkId, Mark] => {
    const [far, way] = [chance.between(0, rough), chance.between(0, 2 * Math.PI)];
    const at = { x: x + far * Math.cos(way), y: y + far * Math.sin(way) };
    const [east, north] = [at.x * cos - at.y * sin, at.x * sin + at.y * cos];
    return [id, { x: east, y: north, label: '', fixed: false }];
  });
  return Object.fromEntries(marks);
};

/**
 * A yard by a seed: a house whose corners are told to be square, or that has both its diagonals taped,
 * and 4 to 8 fence corners about it, each tied to the two or three house corners next to it, with the
 * legs between them taped too. Every reading has noise of its tape's own sigma and is read to 1/8 in;
 * one tape has a gross error of 12 sigmas or more.
 */
export const plantedYard = (seed: number): PlantedYard => {
  const chance = chanceOf(seed);
  const corners = houseOf(chance);
  const posts = fenceOf(corners, chance);
  const places = new Map<MarkId, Place>([
    ...corners.map((at, n) => [house(n), at] as const),
    ...posts.map((at, n) => [post(n), at] as const),
  ]);
  const diagonals = chance.percent(50);
  const pulls = pullsOf(places, { posts: posts.length, diagonals, chance });
  const squares = diagonals ? [] : [0, 1, 2, 3];
  const seen: Observation[] = [
    ...pulls.map((pull) => tapeBetween(pull, places, chance)),
    ...squares.map((n): Observation => ({
      kind: 'square',
      at: house(n),
      from: house(n + 3),
      to: house(n + 1),
      ...nothing,
    })),
  ];
  const entries = seen.map((one, n) => [`observation:${n + 1}` as ObservationId, one] as const);
  const tapes = entries.flatMap(([id, one]) => (one.kind === 'tape' ? [[id, one] as const] : []));
  const { id, tape, sigmas } = plant(tapes, chance);
  const observations = Object.fromEntries(entries);
  const right = { ...namedSite('Planted'), marks: drawnAt(places, chance), observations };
  return {
    right,
    site: { ...right, observations: { ...observations, [id]: tape } },
    planted: id,
    sigmas,
  };
};

/** What the survey of a yard said of the reading that is wrong in it. */
export interface ToldYard {
  readonly sigmas: number;
  /** Of an error in the tape the share that all others show, where it is read right. */
  readonly redundancy: number;
  /** Whether it is the first that is named, and whether it is one of those that cannot be told from that. */
  readonly first: boolean;
  readonly among: boolean;
}

const surveyIn = (site: Site) => surveyOf(surveyed(site, null).site, newCarry());

/** What is said of a yard by its seed, all the way from the document on. */
export const toldYard = (seed: number): ToldYard => {
  const { right, site, planted, sigmas } = plantedYard(seed);
  const [named = []] = surveyIn(site).suspects.map(({ ids }) => ids);
  const redundancy = surveyIn(right).readings[planted]?.redundancy ?? 0;
  return { sigmas, redundancy, first: named[0] === planted, among: named.includes(planted) };
};

/**
 * Of a tape of which the others show less than this an error of 12 sigmas may well not show: found four
 * times in five where one good reading in a thousand is called wrong, it takes 4.13 sigmas over the root
 * of the redundancy (W. Baarda 1968, from memory).
 */
export const leastRedundancy = (4.13 / leastSigmas) ** 2;
