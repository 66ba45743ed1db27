import { commonSaves } from '../../site/merge/commonSaves.ts';
import { merged, type Merge } from '../../site/merge/merged.ts';
import type { Site } from '../../site/site.ts';
import type { Underlay } from '../../site/underlay.ts';
import type { CopyShelf } from '../../store/copyShelf.ts';
import { rememberedCopy, withLineage, type OwnCopy } from './copies.ts';
import { digestOf } from './digestOf.ts';

/** A copy of the job on the pad that came in a file, and what would come of a merge. */
export interface Offer {
  readonly file: string;
  readonly theirs: Site;
  /** The document on the pad that it is merged with. */
  readonly mine: Site;
  readonly merge: Merge;
  /** How the copies stand to each other. */
  readonly is: 'apart' | 'without what both came from' | 'older' | 'newer' | 'same';
}

/** A remembered document with the pictures that it showed, which are not remembered with it. */
const withPictures = (base: Site, copies: readonly Site[]): Site => {
  const shown = new Set(Object.values<Underlay>(base.underlays).map(({ picture }) => picture));
  const pictures = copies.flatMap((copy) =>
    Object.entries(copy.pictures).filter(([id]) => shown.has(id as never)),
  );
  return { ...base, pictures: Object.fromEntries(pictures) };
};

/** The file that came, and what it has. */
export interface Came {
  readonly file: string;
  readonly site: Site;
}

/**
 * What there is to say of a file while a job is on the pad: null where it is of another job, or nobody knows of
 * which.
 */
export const offerOf = async (
  shelf: CopyShelf,
  own: OwnCopy,
  { file, site: theirs }: Came,
): Promise<Offer | null> => {
  const mine = await withLineage(shelf, own);
  if (mine.lineage.job === null || mine.lineage.job !== theirs.lineage.job) return null;
  const [here, there] = [digestOf(own.document), digestOf(theirs)];
  const common = commonSaves({ site: mine, digest: here }, { site: theirs, digest: there });
  const made = (base: Site | null, is: Offer['is']): Offer => ({
    file,
    theirs,
    mine: own.document,
    merge: merged(base, mine, theirs),
    is,
  });
  if (here === there) return made(theirs, 'same');
  // one that came from the other has nothing that the other has not
  if (common.includes(here)) return made(mine, 'newer');
  if (common.includes(there)) return made(theirs, 'older');
  const base = await rememberedCopy(shelf, common);
  return base === null
    ? made(null, 'without what both came from')
    : made(withPictures(base, [mine, theirs]), 'apart');
};
