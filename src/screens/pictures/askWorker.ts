import { phrase } from '../../phrases/phrase.ts';
import { language } from '../../phrases/speak.ts';
import { unread, type Parsed } from '../../units/parsed.ts';
import type { Bitmap, PictureAnswer, PictureCall, Taken } from './pictureCall.ts';

type Answer = Parsed<Taken | Bitmap>;

/** Asks the worker that decodes pictures; it is started with the first call. */
export interface PictureWorker {
  readonly take: (
    call: Extract<PictureCall, { do: 'take' | 'take page' }>,
  ) => Promise<Parsed<Taken>>;
  readonly show: (
    call: Extract<PictureCall, { do: 'show' | 'straighten' }>,
  ) => Promise<Parsed<Bitmap>>;
}

/** A worker of its own for pictures. A call never fails but by its one line. */
export const createPictureWorker = (): PictureWorker => {
  let worker: Worker | null = null;
  let last = 0;
  const waiting = new Map<number, (answer: Answer) => void>();
  const giveUp = (): void => {
    // out of memory, most likely: a new one is started with the next call
    worker?.terminate();
    worker = null;
    const stuck = [...waiting.values()];
    waiting.clear();
    for (const tell of stuck)
      tell(unread(phrase`this device cannot decode it: it ran out of room`));
  };
  const started = (): Worker => {
    if (worker !== null) return worker;
    worker = new Worker(new URL('./pictureWorker.ts', import.meta.url), {
      type: 'module',
      name: language(),
    });
    worker.addEventListener('error', giveUp);
    worker.addEventListener('message', ({ data }: MessageEvent<PictureAnswer>) => {
      waiting.get(data.number)?.(data.answer);
      waiting.delete(data.number);
    });
    return worker;
  };
  const ask = (call: PictureCall): Promise<Answer> =>
    new Promise((tell) => {
      last += 1;
      waiting.set(last, tell);
      const transfer = call.do === 'take page' ? [call.page] : [];
      started().postMessage({ number: last, call }, transfer);
    });
  return {
    take: (call) => ask(call) as Promise<Parsed<Taken>>,
    show: (call) => ask(call) as Promise<Parsed<Bitmap>>,
  };
};
