import { speakNamed } from '../speakNamed.ts';
import type { PictureAnswer, PictureCall } from './pictureCall.ts';

const decoder = speakNamed(() => import('./answerPictureCall.ts'));

/** Decodes, reduces and straightens pictures one after the other, so that the pad answers meanwhile. */
let queue: Promise<unknown> = decoder;
self.addEventListener(
  'message',
  ({ data }: MessageEvent<{ readonly number: number; readonly call: PictureCall }>) => {
    queue = queue.then(async () => {
      const { answerPictureCall } = await decoder;
      const answer = await answerPictureCall(data.call);
      const said: PictureAnswer = { number: data.number, answer };
      const bitmap = answer.ok && 'bitmap' in answer.value ? [answer.value.bitmap] : [];
      self.postMessage(said, { transfer: bitmap });
    });
    // where it cannot be had the worker has failed
    queue.catch(() => undefined);
  },
);
