import { lackingParts } from './lackingParts.ts';
import type { SheetAnswer, SheetCall } from './sheetCall.ts';

/** A set that is being drawn; `stop` ends it at once, and nothing more is said of it. */
export interface Drawing {
  readonly stop: () => void;
}

/** A worker that waits for a set: its parts are on the device. */
let idle: Worker | null = null;

const begun = (): Worker => {
  const worker = new Worker(new URL('./sheetWorker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('error', () => {
    worker.terminate();
    if (idle === worker) idle = null;
  });
  return worker;
};

const started = (): Worker => {
  const worker = idle ?? begun();
  idle = null;
  return worker;
};

/** Fetches what draws sets of sheets while there is a connection, so that they can be drawn without one. */
export const readySheets = (): void => {
  idle ??= begun();
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
