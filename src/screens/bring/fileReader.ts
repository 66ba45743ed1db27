import type { FileToRead } from '../../importers/readFound.ts';
import type { Found } from '../../site/found.ts';
import { phrase } from '../../phrases/phrase.ts';
import { language } from '../../phrases/speak.ts';
import { unread, type Parsed } from '../../units/parsed.ts';
import type { FoundSummary } from './foundSummary.ts';

/** What is asked of the worker: to read a file, then for groups of it by their keys. */
export type ReaderCall =
  | { readonly kind: 'read'; readonly file: FileToRead }
  | { readonly kind: 'pick'; readonly keys: readonly string[] };

/** What the worker answers. */
export type ReaderAnswer =
  | { readonly kind: 'read'; readonly summary: Parsed<FoundSummary> }
  | { readonly kind: 'picked'; readonly found: Found }
  | { readonly kind: 'failed'; readonly why: string };

/** A file that is being read in a worker of its own. */
export interface FileReading {
  readonly summary: Promise<Parsed<FoundSummary>>;
  /** The groups of these keys, with all that is in them; null where the worker is gone. */
  readonly pick: (keys: readonly string[]) => Promise<Found | null>;
  /** Ends the worker; what was not answered never will be. */
  readonly stop: () => void;
}

const gone = phrase`cannot be read: what reads it is not on this device yet, or ran out of room`;

/** Reads a file in a worker, which takes its bytes over. */
export const readInWorker = (
  file: FileToRead & { readonly bytes: Uint8Array<ArrayBuffer> },
): FileReading => {
  const worker = new Worker(new URL('./bringWorker.ts', import.meta.url), {
    type: 'module',
    name: language(),
  });
  const next = (): Promise<ReaderAnswer> =>
    new Promise((resolve) => {
      const said = ({ data }: MessageEvent<ReaderAnswer>) => resolve(data);
      worker.addEventListener('message', said, { once: true });
      worker.addEventListener('error', () => resolve({ kind: 'failed', why: gone }), {
        once: true,
      });
    });
  const call = (asked: ReaderCall, taken: Transferable[]): Promise<ReaderAnswer> => {
    const answer = next();
    worker.postMessage(asked, taken);
    return answer;
  };
  const summary = call({ kind: 'read', file }, [file.bytes.buffer]).then((answer) => {
    if (answer.kind === 'read') return answer.summary;
    return unread(answer.kind === 'failed' ? answer.why : gone);
  });
  return {
    summary,
    pick: async (keys) => {
      const answer = await call({ kind: 'pick', keys }, []);
      return answer.kind === 'picked' ? answer.found : null;
    },
    stop: () => worker.terminate(),
  };
};
