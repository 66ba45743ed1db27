import type { Site } from '../site/site.ts';
import { layOutFrom } from './layOutFrom.ts';
import type { Layout } from './layout.ts';

/**
 * Everything that follows from a site: posts, runs and openings, then the load list, then the
 * flags. An empty site has an empty layout. Never throws for a site that `openSite` accepts.
 */
export const layOutSite = (site: Site): Layout => layOutFrom(site, null).layout;
