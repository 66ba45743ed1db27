import type { Site } from '../site/site.ts';
import { flagsOf } from './checks/flagsOf.ts';
import type { Layout } from './layout.ts';
import { loadList } from './load/loadList.ts';
import { layLines } from './posts/layLines.ts';

/**
 * Everything that follows from a site: posts, runs and openings, then the load list, then the
 * flags. An empty site has an empty layout. Never throws for a site that `openSite` accepts.
 */
export const layOutSite = (site: Site): Layout => {
  const laid = layLines(site);
  const { lines, posts, gates, ground } = laid;
  return { lines, posts, gates, ground, load: loadList(laid, site), flags: flagsOf(site, laid) };
};
