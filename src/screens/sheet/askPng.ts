import { lackingParts } from './lackingParts.ts';
import { unread, type Parsed } from '../../units/parsed.ts';
import { language } from '../../phrases/speak.ts';
import type { PngCall } from './pngWorker.ts';

/** A page as a PNG, made in a worker of its own that ends with it. Fails by its one line alone. */
export const askPng = (call: PngCall): Promise<Parsed<Uint8Array<ArrayBuffer>>> =>
  new Promise((tell) => {
    const worker = new Worker(new URL('./pngWorker.ts', import.meta.url), {
      type: 'module',
      name: language(),
    });
    const end = (answer: Parsed<Uint8Array<ArrayBuffer>>): void => {
      worker.terminate();
      tell(answer);
    };
    worker.addEventListener('message', ({ data }: MessageEvent<Parsed<Uint8Array<ArrayBuffer>>>) =>
      end(data),
    );
    worker.addEventListener('error', () => end(unread(lackingParts())));
    worker.postMessage(call, []);
  });
