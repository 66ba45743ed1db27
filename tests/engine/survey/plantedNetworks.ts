import { judge } from '../../../src/engine/survey/judged.ts';
import { adjusted } from '../../../src/engine/survey/adjusted.ts';
import type { Network } from '../../../src/engine/survey/networks.ts';
import type { Sighting } from '../../../src/engine/survey/sighting.ts';
import type { ObservationId } from '../../../src/site/ids.ts';
import { inches } from '../../../src/units/inches.ts';
import { chanceOf, type Chance } from './chance.ts';
import { blurred, networkOf, sketchOf, yardTapes } from './yardNetwork.ts';

/** What goes wrong with a tape: a foot or ten misread, or two digits of the feet told the wrong way round. */
export const blunders = ['a foot misread', 'ten feet misread', 'digits exchanged'] as const;
export type Blunder = (typeof blunders)[number];

/** The least error that is planted, over the sigma of its tape. */
export const leastSigmas = 12;

/** A yard with one reading in it that is wrong, and what was said of it. */
export interface Planted {
  readonly blunder: Blunder;
  /** The error over the sigma of its tape. */
  readonly sigmas: number;
  /** Of an error in the tape, the share that all others show. */
  readonly redundancy: number;
  /** Where in the list of suspects it was told, from 0; null where it was not. */
  readonly place: number | null;
  /** How many readings were told with it, since they cannot be told apart. */
  readonly together: number;
}

/** The wrong reading for a right one, inches; null where the blunder makes none. */
const misread = (length: number, blunder: Blunder, { pick }: Chance): number | null => {
  if (blunder === 'a foot misread') return length + pick([-12, 12]);
  if (blunder === 'ten feet misread') return length + pick([-120, 120]);
  const feet = Math.floor(length / 12);
  const [tens, ones] = [Math.floor(feet / 10) % 10, feet % 10];
  return tens === ones ? null : length + 12 * 9 * (ones - tens);
};

/** One tape of a network with an error of so many sigmas at least. */
const plantIn = (tapes: readonly Sighting[], chance: Chance) => {
  for (;;) {
    const one = chance.pick(tapes);
    const blunder = chance.pick(blunders);
    if (one.seen.kind !== 'tape') continue;
    const length = misread(one.seen.length, blunder, chance);
    const sigmas = length === null ? 0 : Math.abs(length - one.seen.length) / one.sigma;
    // nobody writes down a tape of less than a foot or of nothing
    if (length === null || length < 12 || sigmas < leastSigmas) continue;
    const wrong = { ...one, seen: { ...one.seen, length: inches(length) } };
    return { id: one.id, wrong, blunder, sigmas };
  }
};

const standing = (network: Network): Network => {
  const { places } = adjusted(network);
  const spots = [...network.spots].map(
    ([id, spot]) => [id, { ...spot, ...places.get(id) }] as const,
  );
  return { ...network, spots: new Map(spots) };
};

const redundancyIn = (network: Network, id: ObservationId): number =>
  judge(standing(network)).readings.find(([own]) => own === id)?.[1].redundancy ?? 0;

/**
 * A yard by a seed: a house of four corners or six with its sides and all diagonals taped, four to eight
 * fence corners about it, each tied to so many house corners, and the legs of the fence. Every reading is
 * off by chance as far as it is trusted, every mark is sketched up to 6 ft off along x and y, and one
 * tape, any of them alike, has a gross error of 12 sigmas or more.
 */
export const planted = (seed: number, ties = 3): Planted => {
  const chance = chanceOf(7919 * seed + 17);
  const { truth, tapes } = yardTapes(seed, ties);
  const good = networkOf(
    sketchOf(truth, 72, chance),
    tapes.map((seen) => blurred(seen, chance)),
  );
  const { id, wrong, blunder, sigmas } = plantIn(good.sightings, chance);
  const sightings = good.sightings.map((one) => (one.id === id ? wrong : one));
  const { suspects } = judge(standing({ ...good, sightings }));
  const place = suspects.findIndex(({ ids }) => ids.includes(id));
  return {
    blunder,
    sigmas,
    redundancy: redundancyIn(good, id),
    place: place < 0 ? null : place,
    together: suspects[place]?.ids.length ?? 0,
  };
};
