import { emptySite } from '../../src/site/emptySite.ts';
import type { Site } from '../../src/site/site.ts';
import type { History } from '../../src/store/history.ts';
import type { JobHead, JobShelf } from '../../src/store/jobShelf.ts';
import { loadKept } from '../../src/store/loadKept.ts';
import { keep, mostHistory } from '../../src/store/persist.ts';
import type { PictureBytes } from '../../src/store/picturesApart.ts';
import { createSession } from '../../src/store/session.ts';
import { createSiteStore, type SiteStore } from '../../src/store/siteStore.ts';
import { noPictures } from './memoryShelf.ts';
import { samplePlans } from './samplePlans.ts';

interface Parts {
  readonly shelf: JobShelf;
  readonly bytes?: PictureBytes;
  readonly first?: Site;
  readonly most?: number;
}

/** A window of the program as it starts with what lies on a shelf. */
export const openDesk = async ({ shelf, bytes = noPictures, first, most = mostHistory }: Parts) => {
  const kept = await loadKept({ shelf, bytes });
  const site = createSiteStore(first ?? emptySite({ specs: {}, hardware: {} }));
  const session = createSession(samplePlans);
  session.setState(kept.session);
  const told: Pick<JobHead, 'id' | 'writes'>[] = [];
  if (kept.job !== null) site.getState().take(kept.job.again, kept.under?.again ?? null);
  let clock = 0;
  const keeper = keep({
    shelf,
    bytes,
    site,
    session,
    most,
    known: [kept.job, kept.under].flatMap((job) => (job === null ? [] : [job.ledger])),
    now: () => (clock += 1),
    tell: (written) => told.push(written),
  });
  return { kept, site, session, keeper, told };
};

/** A history as labels and documents, to be compared. */
export const historyOf = (site: SiteStore) => {
  const { history, drawn } = site.getState();
  const plain = ({ past, present, future }: History) =>
    [past, [present], future].map((part) =>
      part.map((version) => ({ label: version.label, drawn: drawn(version.site) })),
    );
  // newest first, since they are had one from the other
  return plain(history);
};
