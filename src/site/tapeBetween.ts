import type { MarkId, ObservationId } from './ids.ts';
import type { ObservationOf } from './observation.ts';
import type { Site } from './site.ts';

/** A tape of a site, by its id. */
export interface FoundTape {
  readonly id: ObservationId;
  readonly tape: ObservationOf<'tape'>;
}

/** The tapes between two marks, whichever way they were pulled, in the order of their entry. */
export const tapesBetween = (site: Site, a: MarkId, b: MarkId): FoundTape[] =>
  (Object.entries(site.observations) as [ObservationId, Site['observations'][ObservationId]][])
    .filter(
      (found): found is [ObservationId, ObservationOf<'tape'>] =>
        found[1].kind === 'tape' &&
        ((found[1].from === a && found[1].to === b) || (found[1].from === b && found[1].to === a)),
    )
    .map(([id, tape]) => ({ id, tape }));

/** The first tape between two marks; null for none. */
export const tapeBetween = (site: Site, a: MarkId, b: MarkId): FoundTape | null =>
  tapesBetween(site, a, b)[0] ?? null;
