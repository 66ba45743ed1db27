import type { LineId, SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Layout, LineLayout } from '../layout.ts';

/** The first line of each build that has a bay on a site. */
export const firstLines = (
  site: Pick<Site, 'lines'>,
  { lines }: Pick<Layout, 'lines'>,
): ReadonlyMap<SpecId, LineId> => {
  const found = new Map<SpecId, LineId>();
  for (const { id, runs } of Object.values<LineLayout>(lines)) {
    const spec = site.lines[id]?.spec;
    if (spec === undefined || found.has(spec)) continue;
    if (runs.some(({ spaces }) => spaces.some(({ kind }) => kind === 'bay'))) found.set(spec, id);
  }
  return found;
};
