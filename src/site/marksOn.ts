import { firstOnSpot } from '../geometry/firstOnSpot.ts';
import type { SitePoint } from '../geometry/point.ts';
import type { MarkId } from './ids.ts';
import { limits } from './limits.ts';
import type { Mark } from './mark.ts';
import { nextIds } from './nextId.ts';
import type { Site } from './site.ts';
import { withEntries } from './withEntries.ts';
import { phrase } from '../phrases/phrase.ts';

/** A point that is to have a mark, and the name that the mark is to have; may be empty. */
export interface NamedPoint {
  readonly at: SitePoint;
  readonly name: string;
}

const noRoom = (count: number): RangeError =>
  new RangeError(
    phrase`marks: expected at most ${limits.marks} entries, found ${count}: leave some layers out`,
  );

/**
 * A mark for every point, in their order, and the site that has them: one mark for all points on a
 * spot (1/64 in), one that stands there already before a new one. A name goes to a mark without one;
 * where the mark has another name the point gets a mark of its own beside it. RangeError for more
 * marks than a site holds.
 */
export const marksOn = (
  site: Site,
  points: readonly NamedPoint[],
): { readonly site: Site; readonly marks: readonly MarkId[] } => {
  const own = Object.entries(site.marks) as [MarkId, Mark][];
  const first = firstOnSpot([...own.map(([, mark]) => mark), ...points.map(({ at }) => at)]);
  // the marks of each spot that one name or none can go to; new ones have no id yet
  const spots = new Map<number, { id: MarkId | null; mark: Mark }[]>();
  const slots = points.map(({ at, name }, n) => {
    const spot = first[own.length + n] ?? 0;
    const known = spots.get(spot) ?? own.slice(spot, spot + 1).map(([id, mark]) => ({ id, mark }));
    spots.set(spot, known);
    const same = known.find(({ mark }) => name === '' || mark.label === name);
    const slot = same ?? known.find(({ mark }) => mark.label === '');
    if (slot === undefined) {
      const fresh = { id: null, mark: { x: at.x, y: at.y, label: name, fixed: false } };
      known.push(fresh);
      return fresh;
    }
    if (name !== '') slot.mark = { ...slot.mark, label: name };
    return slot;
  });
  const used = [...new Set(slots)];
  const fresh = used.filter(({ id }) => id === null);
  if (own.length + fresh.length > limits.marks) throw noRoom(own.length + fresh.length);
  const ids = nextIds(site, 'mark', fresh.length);
  fresh.forEach((slot, n) => (slot.id = ids[n] ?? null));
  const idOf = ({ id }: { readonly id: MarkId | null }): MarkId => id ?? 'mark:1';
  const entries = Object.fromEntries(used.map((slot) => [idOf(slot), slot.mark]));
  return { site: withEntries(site, 'marks', entries), marks: slots.map(idOf) };
};
