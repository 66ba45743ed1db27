import type { MarkId } from '../../site/ids.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Observation } from '../../site/observation.ts';
import type { Sighting, Spot, Spots } from './sighting.ts';

/** Marks that observations join, directly or through one another, and these observations. */
export interface Network {
  readonly spots: Spots;
  readonly sightings: readonly Sighting[];
}

/** What an observation reads, in figures. */
const figuresOf = (seen: Observation): readonly number[] => {
  switch (seen.kind) {
    case 'tape':
      return [seen.length];
    case 'offset':
      return [seen.distance];
    case 'bearing':
      return [seen.bearing];
    case 'fix':
      return [seen.x, seen.y];
    default:
      return [];
  }
};

/** A sighting and all that it says; its id alone follows the order of entry. */
interface Told {
  readonly sighting: Sighting;
  readonly marks: readonly MarkId[];
  /** What it is of. */
  readonly text: string;
  readonly figures: readonly number[];
}

const toldOf = (sighting: Sighting): Told => {
  const { seen, sigma } = sighting;
  const marks = Object.values(marksObserved(seen));
  const text = `${seen.kind} ${marks.join(' ')}`;
  return { sighting, marks, text, figures: [...figuresOf(seen), sigma] };
};

/** Which of two comes first by what they say: 0 where they say the same. */
const byWhatIsSaid = (a: Told, b: Told): number => {
  if (a.text !== b.text) return a.text < b.text ? -1 : 1;
  const other = a.figures.findIndex((figure, n) => figure !== b.figures[n]);
  return other < 0 ? 0 : a.figures[other]! - b.figures[other]!;
};

/** A network of observations and of those of some marks that they are of, by their ids. */
const networkOf = (spots: Spots, told: readonly Told[]): Network => {
  const own = new Map<MarkId, Spot>();
  for (const id of [...new Set(told.flatMap(({ marks }) => marks))].toSorted()) {
    const spot = spots.get(id);
    if (spot !== undefined) own.set(id, spot);
  }
  return { spots: own, sightings: told.map(({ sighting }) => sighting) };
};

/**
 * Observations parted into networks that have no mark in common that could move: a fixed mark joins
 * nothing. In the order of what they say, so that the order of entry does not matter to the last bit.
 */
export const networks = (spots: Spots, sightings: readonly Sighting[]): Network[] => {
  const root = new Map<MarkId, MarkId>();
  const find = (id: MarkId): MarkId => {
    const up = root.get(id) ?? id;
    if (up === id) return id;
    const top = find(up);
    root.set(id, top);
    return top;
  };
  const isFree = (id: MarkId): boolean => spots.get(id)?.fixed === false;
  const told = sightings.map(toldOf).sort(byWhatIsSaid);
  for (const { marks } of told) {
    const [first, ...others] = marks.filter(isFree);
    for (const other of others) if (first !== undefined) root.set(find(other), find(first));
  }
  const parted = new Map<MarkId | 'fixed', Told[]>();
  for (const one of told) {
    const first = one.marks.find(isFree);
    const key = first === undefined ? 'fixed' : find(first);
    const known = parted.get(key);
    if (known === undefined) parted.set(key, [one]);
    else known.push(one);
  }
  return [...parted.values()].map((own) => networkOf(spots, own));
};
