import {
  joinedLineage,
  lineageAt,
  lineageSchema,
  withSave,
  type Lineage,
} from '../../site/lineage.ts';
import { openSite } from '../../site/openSite.ts';
import type { Site } from '../../site/site.ts';
import { unlinedText } from '../../site/unlinedText.ts';
import type { CopyShelf } from '../../store/copyShelf.ts';
import type { JobId } from '../../store/jobId.ts';
import { freshJob } from '../files/freshJob.ts';
import { digestOf } from './digestOf.ts';

/** A job on this device, as the shelf knows it, and the document of it that is meant. */
export interface OwnCopy {
  readonly job: JobId;
  readonly document: Site;
}

const toldLineage = async (shelf: CopyShelf, job: JobId): Promise<Lineage | null> => {
  try {
    const read = lineageSchema.safeParse(await shelf.lineageOf(job));
    return read.success ? read.data : null;
  } catch {
    // a device that cannot keep remembers nothing
    return null;
  }
};

/** Remembers a document as it is; a device that cannot goes without. Pictures are kept elsewhere. */
export const rememberCopy = async (shelf: CopyShelf, document: Site): Promise<void> => {
  try {
    await shelf.write(digestOf(document), unlinedText({ ...document, pictures: {} }));
  } catch {
    // the next copy of it is merged without what both came from
  }
};

/** A document with all that is known of where it comes from: what it says, and what this device saved of it. */
export const withLineage = async (shelf: CopyShelf, { job, document }: OwnCopy): Promise<Site> => {
  const told = await toldLineage(shelf, job);
  if (told === null) return document;
  return { ...document, lineage: joinedLineage(told, document.lineage) };
};

/**
 * A document as it goes into a file: one that says that it was this, so that a copy of it that comes back
 * finds it. It is remembered on the device. The same document saved again says the same, whatever was saved between.
 */
export const asSaved = async (shelf: CopyShelf, own: OwnCopy): Promise<Site> => {
  const known = await withLineage(shelf, own);
  const lineage = withSave(known.lineage, digestOf(own.document), freshJob());
  await rememberCopy(shelf, own.document);
  try {
    await shelf.tell(own.job, lineage);
  } catch {
    // it says so in the file all the same
  }
  return { ...own.document, lineage: lineageAt(lineage, digestOf(own.document)) };
};

/** The first of some documents that this device remembers, by their digests; null for none. */
export const rememberedCopy = async (
  shelf: CopyShelf,
  digests: readonly string[],
): Promise<Site | null> => {
  for (const digest of digests) {
    try {
      const text = await shelf.read(digest);
      const site = text === null ? null : openSite(text);
      if (site?.ok === true) return site.value;
    } catch {
      return null;
    }
  }
  return null;
};
