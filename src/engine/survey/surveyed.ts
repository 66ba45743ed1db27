import type { SitePoint } from '../../geometry/point.ts';
import { sameSpot } from '../../geometry/sameSpot.ts';
import { farthest } from '../../geometry/tolerance.ts';
import type { MarkId, ObservationId } from '../../site/ids.ts';
import type { Mark } from '../../site/mark.ts';
import type { Observation } from '../../site/observation.ts';
import type { Site } from '../../site/site.ts';
import { newCarry, type Carry, type Pieces } from '../carry/carry.ts';
import { adjusted } from './adjusted.ts';
import { frameFrom } from './frame.ts';
import { networks, type Network } from './networks.ts';
import { sigmaOf, type Sighting } from './sighting.ts';

/** A document, and its site as it stands: every mark where what was observed puts it. */
export interface Surveyed {
  readonly drawn: Site;
  readonly site: Site;
  /** What the next one may take over. */
  readonly pieces: Pieces;
}

/** Whether a hand has drawn a mark elsewhere than satellites found it: the hand knows better. */
const isOutdone = (marks: Site['marks'], seen: Observation): boolean => {
  const mark = seen.kind === 'fix' ? marks[seen.mark] : undefined;
  return seen.kind === 'fix' && mark !== undefined && !sameSpot(mark, seen);
};

/**
 * What was observed on a site as it was drawn, each with how far it is trusted; not what satellites
 * found of marks that are drawn elsewhere.
 */
export const sightingsOf = ({ marks, observations, trusts }: Site): Sighting[] =>
  (Object.entries(observations) as [ObservationId, Observation][])
    .filter(([, seen]) => !isOutdone(marks, seen))
    .map(([id, seen]) => ({ id, seen, sigma: sigmaOf(seen, trusts) }));

/** The networks of a site, by all that was observed on it unless told otherwise. */
export const networksOf = (site: Site, sightings = sightingsOf(site)): Network[] =>
  networks(new Map(Object.entries(site.marks) as [MarkId, Mark][]), sightings);

/** A network by all that its sums are of: marks where they are and what was read of them. */
export const networkKey = ({
  spots,
  sightings,
}: Network): { readonly id: string; readonly from: readonly unknown[] } => {
  const from: unknown[] = [];
  for (const [id, { x, y, fixed }] of spots) from.push(id, x, y, fixed);
  for (const { id, seen, sigma } of sightings) from.push(id, seen, sigma);
  return { id: sightings[0]?.id ?? '', from };
};

/** Whether no document could hold a mark there. */
const isTooFar = ({ x, y }: SitePoint): boolean => Math.max(Math.abs(x), Math.abs(y)) > farthest;

/** The marks that a network moves; none where it would take one beyond ten miles. */
const movedIn = (
  site: Site,
  network: Network,
  carry: Carry,
): readonly (readonly [MarkId, Mark])[] => {
  const { id, from } = networkKey(network);
  return carry
    .shelf<readonly (readonly [MarkId, Mark])[]>('adjusted')
    .take(id, [...from, ...[...network.spots.keys()].map((mark) => site.marks[mark])], () => {
      const { places } = adjusted(network, frameFrom(network, carry));
      if ([...places.values()].some(isTooFar)) return [];
      return [...places].flatMap(([mark, { x, y }]) => {
        const drawn = site.marks[mark];
        if (drawn === undefined || (drawn.x === x && drawn.y === y)) return [];
        return [[mark, { ...drawn, x, y }] as const];
      });
    });
};

/**
 * The site as it stands by what was observed; the document itself where nothing moves. What no edit
 * touched since the one before is taken over from that, the very same marks; the result is the same
 * from any and from none. Never throws for a site that `openSite` accepts.
 */
export const surveyed = (drawn: Site, before: Surveyed | null): Surveyed => {
  if (before?.drawn === drawn) return before;
  const carry = newCarry(before?.pieces);
  const moved = networksOf(drawn).flatMap((network) => movedIn(drawn, network, carry));
  const marks = moved.length === 0 ? drawn.marks : { ...drawn.marks, ...Object.fromEntries(moved) };
  const site = marks === drawn.marks ? drawn : { ...drawn, marks };
  return { drawn, site, pieces: carry.pieces };
};
