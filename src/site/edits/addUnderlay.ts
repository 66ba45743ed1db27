import type { Tie } from '../../geometry/tie.ts';
import { nextId, nextIds } from '../nextId.ts';
import type { Site } from '../site.ts';
import type { Underlay } from '../underlay.ts';
import { withUnderlay } from '../withUnderlay.ts';

/** A picture as it is first laid under the drawing, by two of its points. */
export type NewUnderlay = Pick<Underlay, 'label' | 'picture' | 'file' | 'width' | 'height'> & {
  readonly ties: readonly [Tie, Tie];
};

/**
 * Lays a picture under the drawing, under `nextId(site, 'underlay')`: all of it shows, it is not locked,
 * and how large it is is a guess. It is beside the file until `keepUnderlay` says otherwise. RangeError
 * for ties that do not say where it lies and for one too many.
 */
export const addUnderlay = (site: Site, { ties, ...laid }: NewUnderlay): Site => {
  const ids = nextIds(site, 'tie', 2);
  const tied = ties.map(({ u, v, x, y }, n) => [ids[n] ?? `tie:${n}`, { u, v, x, y }] as const);
  return withUnderlay(site, nextId(site, 'underlay'), {
    ...laid,
    ties: Object.fromEntries(tied),
    size: 'guessed',
    shows: 1,
    locked: false,
  });
};
