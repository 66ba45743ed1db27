import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import type { LoadLine } from '../../../src/engine/loadLine.ts';
import type { Site } from '../../../src/site/site.ts';

/** A layout with its load list. */
export interface Loaded extends Layout {
  readonly load: readonly LoadLine[];
}

/** A site laid out and counted as the trade does where a company says nothing. */
export const loaded = (site: Site): Loaded => {
  const layout = layOutSite(site);
  return { ...layout, load: loadOf(site, layout).lines };
};

/** The load list of a site. */
export const loadLines = (site: Site): readonly LoadLine[] => loaded(site).load;
