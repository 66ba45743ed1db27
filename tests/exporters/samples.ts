import { layOutSite } from '../../src/engine/layOutSite.ts';
import type { Layout } from '../../src/engine/layout.ts';
import { openSite } from '../../src/site/openSite.ts';
import type { Site } from '../../src/site/site.ts';
import { sampleSites } from '../cli/sampleSites.ts';

/** The sample sites, opened and laid out. */
export const samples: readonly {
  readonly name: string;
  readonly site: Site;
  readonly layout: Layout;
}[] = sampleSites.map(({ name, text }) => {
  const site = openSite(text);
  if (!site.ok) throw new Error(site.reason);
  return { name, site: site.value, layout: layOutSite(site.value) };
});
