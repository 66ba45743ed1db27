import type { Language } from '../../phrases/languages.ts';
import { lackingParts } from './lackingParts.ts';
import type { SheetAnswer, SheetCall } from './sheetCall.ts';

/** A set that is being drawn; `stop` ends it at once, and nothing more is said of it. */
export interface Drawing {
  readonly stop: () => void;
}

/** Workers that have drawn a set and wait for the next, each in its language; they have what they need. */
const idle = new Map<Language, Worker>();

const started = (language: Language): Worker => {
  const waiting = idle.get(language);
  idle.delete(language);
  return (
    waiting ??
    new Worker(new URL('./sheetWorker.ts', import.meta.url), { type: 'module', name: language })
  );
};

/** Draws a set of sheets in a worker, or makes a PDF of it, and tells `hear` how far it is and what came of it. */
export const drawSheets = (call: SheetCall, hear: (answer: SheetAnswer) => void): Drawing => {
  const worker = started(call.language);
  const over = new AbortController();
  const { signal } = over;
  worker.addEventListener(
    'message',
    ({ data }: MessageEvent<SheetAnswer>) => {
      if (data.do !== 'progress') {
        over.abort();
        // one that lacks a part of itself gets no other by waiting
        if (data.do === 'failed') worker.terminate();
        else idle.set(call.language, worker);
      }
      hear(data);
    },
    { signal },
  );
  worker.addEventListener(
    'error',
    () => {
      over.abort();
      worker.terminate();
      hear({ do: 'failed', why: lackingParts() });
    },
    { signal },
  );
  worker.postMessage(call, []);
  return {
    stop: () => {
      if (signal.aborted) return;
      over.abort();
      // it cannot be talked to while it draws
      worker.terminate();
    },
  };
};
