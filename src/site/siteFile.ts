import { fileStem } from './fileStem.ts';
import { saveSite } from './saveSite.ts';
import type { Site } from './site.ts';

/** A site as a file: its name and its text. */
export interface SiteFile {
  readonly name: string;
  readonly text: string;
}

/** How the name of a site file ends. */
export const siteEnding = '.site.json';

/** The file of a site, its marks where they were drawn: named for the job, with all that `saveSite` writes. */
export const siteFile = (site: Site): SiteFile => ({
  name: `${fileStem(site.job.name)}${siteEnding}`,
  text: saveSite(site),
});
