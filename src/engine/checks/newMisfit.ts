import type { Site } from '../../site/site.ts';
import type { GateLayout, Layout } from '../layout.ts';
import { fitsOf, type FitRow } from './fitsOf.ts';

interface Change {
  readonly before: Site;
  readonly after: Site;
}

const misfits = (site: Site, layout: Pick<Layout, 'posts'>, laid: GateLayout): readonly FitRow[] =>
  fitsOf(site, layout, laid).filter(({ fits }) => fits === false);

const keyOf = ({ role, part, on }: FitRow): string => [role, part, on].join('|');

/**
 * The first misfit that a change of a gate's parts brings in, its posts as they are laid out before
 * it; null where it brings none. One that stood before is no reason to refuse the next change.
 */
export const newMisfit = (
  layout: Pick<Layout, 'posts'>,
  laid: GateLayout,
  { before, after }: Change,
): FitRow | null => {
  const old = new Set(misfits(before, layout, laid).map(keyOf));
  return misfits(after, layout, laid).find((row) => !old.has(keyOf(row))) ?? null;
};
