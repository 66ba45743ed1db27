import { emptySite } from '../../src/site/emptySite.ts';
import type { Site } from '../../src/site/site.ts';
import type { History } from '../../src/store/history.ts';
import type { JobShelf } from '../../src/store/jobShelf.ts';
import type { Written } from '../../src/store/keeping.ts';
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
  /** What other windows hear; none unless given. */
  readonly air?: Air;
}

/** The air between windows: what one tells the others hear, a little later. */
export type Air = Set<(written: Written) => void>;

/** A window of the program as it starts with what lies on a shelf. */
export const openDesk = async ({
  shelf,
  bytes = noPictures,
  first,
  most = mostHistory,
  air = new Set(),
}: Parts) => {
  const kept = await loadKept({ shelf, bytes });
  const site = createSiteStore(first ?? emptySite({ specs: {}, hardware: {} }));
  const session = createSession(samplePlans);
  session.setState(kept.session);
  const told: Written[] = [];
  let ear: (written: Written) => void = () => undefined;
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
    tell: (written) => {
      told.push(written);
      for (const heard of air) if (heard !== ear) setTimeout(() => heard(written));
    },
    hear: (heard) => {
      ear = heard;
      air.add(heard);
    },
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
