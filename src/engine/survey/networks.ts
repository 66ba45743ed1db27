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
const figuresOf = (seen: Observation): readonly (number | null)[] => {
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

/** An observation by all that it says, as a text to be sorted by; its id alone follows the order of entry. */
const saidBy = ({ seen, sigma }: Sighting): string =>
  [seen.kind, ...Object.values(marksObserved(seen)), ...figuresOf(seen), sigma].join(' ');

const byWhatIsSaid = (sightings: readonly Sighting[]): Sighting[] =>
  sightings
    .map((sighting) => ({ sighting, said: saidBy(sighting) }))
    .toSorted((a, b) => (a.said === b.said ? 0 : a.said < b.said ? -1 : 1))
    .map(({ sighting }) => sighting);

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
  const marksOf = ({ seen }: Sighting): MarkId[] =>
    Object.values(marksObserved(seen)).filter((id) => spots.has(id));
  const free = (ids: readonly MarkId[]): MarkId[] =>
    ids.filter((id) => spots.get(id)?.fixed === false);
  for (const sighting of sightings) {
    const [first, ...others] = free(marksOf(sighting));
    for (const other of others) if (first !== undefined) root.set(find(other), find(first));
  }
  const parted = new Map<MarkId | 'fixed', Sighting[]>();
  for (const sighting of byWhatIsSaid(sightings)) {
    const [first] = free(marksOf(sighting));
    const key = first === undefined ? 'fixed' : find(first);
    const known = parted.get(key);
    if (known === undefined) parted.set(key, [sighting]);
    else known.push(sighting);
  }
  return [...parted.values()].map((own) => {
    const ids = [...new Set(own.flatMap(marksOf))].toSorted();
    return {
      spots: new Map(
        ids.flatMap((id): [MarkId, Spot][] => {
          const spot = spots.get(id);
          return spot === undefined ? [] : [[id, spot]];
        }),
      ),
      sightings: own,
    };
  });
};
