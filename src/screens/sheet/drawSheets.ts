import { lackingParts } from './lackingParts.ts';
import type { SheetAnswer, SheetCall } from './sheetCall.ts';

/** A set that is being drawn; `stop` ends it at once, and nothing more is said of it. */
export interface Drawing {
  readonly stop: () => void;
}

/** A worker that has drawn a set and waits for the next; it has what it needs. */
let idle: Worker | null = null;

const started = (): Worker => {
  const worker =
    idle ?? new Worker(new URL('./sheetWorker.ts', import.meta.url), { type: 'module' });
  idle = null;
  return worker;
};

/** Draws a set of sheets in a worker, or makes a PDF of it, and tells `hear` how far it is and what came of it. */
export const drawSheets = (call: SheetCall, hear: (answer: SheetAnswer) => void): Drawing => {
  const worker = started();
  const over = new AbortController();
  const { signal } = over;
  worker.addEventListener(
    'message',
    ({ data }: MessageEvent<SheetAnswer>) => {
      if (data.do !== 'progress') {
        over.abort();
        idle = worker;
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
      hear({ do: 'failed', why: lackingParts });
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
