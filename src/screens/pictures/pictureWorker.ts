import { unread, type Parsed } from '../../units/parsed.ts';
import { shownBitmap, straightBitmap } from './bitmapOf.ts';
import type { Bitmap, PictureAnswer, PictureCall, Taken } from './pictureCall.ts';
import { takenFrom, takenPage } from './takenFrom.ts';

const answerTo = (call: PictureCall): Promise<Parsed<Taken | Bitmap>> => {
  switch (call.do) {
    case 'take':
      return takenFrom(call.file);
    case 'take page':
      return takenPage(call.page, call.file, call.n);
    case 'show':
      return shownBitmap(call.picture, call.longest);
    case 'straighten':
      return straightBitmap(call.picture, call.laid, call.longest);
  }
};

const worked = async (call: PictureCall): Promise<Parsed<Taken | Bitmap>> => {
  try {
    return await answerTo(call);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return unread(`this device cannot decode it: ${why.split('\n')[0] ?? ''}`);
  }
};

/** Decodes, reduces and straightens pictures one after the other, so that the pad answers meanwhile. */
let queue: Promise<void> = Promise.resolve();
self.addEventListener(
  'message',
  ({ data }: MessageEvent<{ readonly number: number; readonly call: PictureCall }>) => {
    queue = queue.then(async () => {
      const answer = await worked(data.call);
      const said: PictureAnswer = { number: data.number, answer };
      const bitmap = answer.ok && 'bitmap' in answer.value ? [answer.value.bitmap] : [];
      self.postMessage(said, { transfer: bitmap });
    });
  },
);
