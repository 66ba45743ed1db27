import { layOutFrom } from '../../engine/layOutFrom.ts';
import type { Layout } from '../../engine/layout.ts';
import { phrase } from '../../phrases/phrase.ts';
import { openDocument } from '../../site/openDocument.ts';
import type { Site } from '../../site/site.ts';
import { rememberLayouts } from '../../store/derived.ts';
import type { JobShelf } from '../../store/jobShelf.ts';
import { loadKept, type Kept, type Shelves } from '../../store/loadKept.ts';
import { pictureBytes } from '../../store/picturesApart.ts';
import { devicePictureShelf, type PictureShelf } from '../../store/pictureShelf.ts';
import { createSiteStore, type SiteStore } from '../../store/siteStore.ts';
import { newSite } from '../files/newSite.ts';
import { samples } from '../files/samples.ts';

/** The yard that the program opens on, before there is anything to draw with. */
export interface OpenedYard extends Shelves {
  readonly pictureShelf: PictureShelf;
  readonly kept: Kept;
  readonly site: SiteStore;
  readonly layOut: (site: Site) => Layout;
}

/** The sample yard that the address asks for; null where it asks for none or for one not there. */
const askedSample = async (): Promise<Site | null> => {
  const id = new URLSearchParams(window.location.search).get('sample');
  const sample = samples.find((one) => one.id === id);
  if (sample === undefined) return null;
  try {
    const site = openDocument(await sample.load());
    return site.ok ? site.value : null;
  } catch {
    return null;
  }
};

/**
 * The job kept on this device that was on the pad last; where there is none, the sample that the address
 * asks for, else an empty pad.
 */
export const openedYard = async (shelf: JobShelf): Promise<OpenedYard> => {
  const pictureShelf = devicePictureShelf();
  const bytes = pictureBytes(pictureShelf);
  // the sample is on its way while the device is read
  const [kept, sample] = await Promise.all([loadKept({ shelf, bytes }), askedSample()]);
  const asked = kept.job === null ? sample : null;
  const site = createSiteStore(asked ?? newSite(kept.session.counting ?? null), phrase`New yard`);
  if (kept.job !== null) site.getState().take(kept.job.again, kept.under?.again ?? null);
  return { pictureShelf, shelf, bytes, kept, site, layOut: rememberLayouts(layOutFrom) };
};
