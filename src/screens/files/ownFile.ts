import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import { phrase } from '../../phrases/phrase.ts';
import { siteFile } from '../../site/siteFile.ts';
import type { JobId } from '../../store/jobId.ts';
import { told } from '../../store/told.ts';
import type { Bench } from '../bench.ts';
import { asSaved } from '../merge/copies.ts';
import { ownCopy } from '../merge/openCopy.ts';
import { chooseToSave, mayWrite, type FileHandle } from './filePickers.ts';
import { takeFile } from './takeFile.ts';

/** The file that a job is saved to, and the digest of what was last read from it or written there. */
export interface OwnFile {
  readonly handle: FileHandle;
  readonly digest: string;
}

/** What came of saving. `differs`: the file is another than it was when this job last had to do with it. */
export type Saved =
  | { readonly is: 'saved' | 'left'; readonly file: OwnFile | null }
  | { readonly is: 'differs'; readonly handle: FileHandle };

const keyOf = (job: JobId): string => `file of ${job}`;

const digested = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

const isOwnFile = (value: unknown): value is OwnFile =>
  typeof value === 'object' && value !== null && 'handle' in value && 'digest' in value;

/** The file of a job; null where it has none, or the device keeps none. */
export const ownFileOf = async ({ jobs }: Bench, job: JobId): Promise<OwnFile | null> => {
  const kept = await jobs.shelf.readDesk(keyOf(job)).catch(() => null);
  return isOwnFile(kept) ? kept : null;
};

/** Keeps the file of a job with it; a device that cannot asks for it again. */
const keepFile = async ({ jobs }: Bench, job: JobId, file: OwnFile): Promise<OwnFile> => {
  await jobs.shelf.writeDesk({ [keyOf(job)]: file }).catch(() => undefined);
  return file;
};

/** Forgets the files of jobs that are gone; the files stay where they are. */
export const forgetFiles = ({ jobs }: Bench, gone: readonly JobId[]): Promise<void> =>
  jobs.shelf.writeDesk(Object.fromEntries(gone.map((job) => [keyOf(job), null])));

/** What stands in a file; null where it is not there any more. */
const textOf = async (handle: FileHandle): Promise<string | null> => {
  try {
    return await (await handle.getFile()).text();
  } catch (error) {
    if (error instanceof DOMException && error.name === 'NotFoundError') return null;
    throw error;
  }
};

/** Writes the job on the pad to a file, whatever stands there, and keeps the file with the job. */
export const writeOver = async (bench: Bench, handle: FileHandle): Promise<OwnFile> => {
  const own = ownCopy(bench);
  const { text } = siteFile(await asSaved(bench.copies, own));
  // what is written takes the place of what was there when it is whole, and not before
  const stream = await handle.createWritable();
  await stream.write(text);
  await stream.close();
  bench.session.setState({ say: phrase`Saved to ${handle.name}` });
  return keepFile(bench, own.job, { handle, digest: digested(text) });
};

const saveTo = async (bench: Bench, { handle, digest }: OwnFile): Promise<Saved> => {
  if (!(await mayWrite(handle))) {
    bench.session.setState({
      say: phrase`${handle.name}: this browser was not allowed to write it`,
    });
    return { is: 'left', file: null };
  }
  const text = await textOf(handle);
  const isAsKnown = text === null || text === '' || digested(text) === digest;
  if (!isAsKnown) return { is: 'differs', handle };
  return { is: 'saved', file: await writeOver(bench, handle) };
};

/** Saves the job on the pad to a file that is chosen. */
export const saveToChosen = async (bench: Bench): Promise<Saved> => {
  const { name } = siteFile(ownCopy(bench).document);
  const handle = await chooseToSave(name);
  if (handle === null) return { is: 'left', file: null };
  return saveTo(bench, { handle, digest: '' });
};

/** Saves the job on the pad to its own file; to one that is chosen where it has none. */
export const saveToOwn = async (bench: Bench): Promise<Saved> => {
  const own = await ownFileOf(bench, ownCopy(bench).job);
  return own === null ? saveToChosen(bench) : saveTo(bench, own);
};

/** Opens a file that the browser lets be written again; a job that it becomes is saved to it. */
export const openOwn = async (bench: Bench, handle: FileHandle): Promise<void> => {
  const before = ownCopy(bench).job;
  const file = await handle.getFile();
  await takeFile(bench, file);
  const { job } = ownCopy(bench);
  if (job === before || !/\.json$/i.test(file.name)) return;
  await keepFile(bench, job, { handle, digest: digested(await file.text()) });
};

/** Does something with files; what fails is one line, and nothing is lost. */
export const withFiles = async <T>(bench: Bench, deed: () => Promise<T>): Promise<T | null> => {
  try {
    return await deed();
  } catch (error) {
    const line = phrase`The file could not be read or written (${told(error)}); the job is as it was`;
    bench.session.setState({ say: line });
    return null;
  }
};
