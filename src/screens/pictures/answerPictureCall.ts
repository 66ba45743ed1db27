import { phrase } from '../../phrases/phrase.ts';
import { unread, type Parsed } from '../../units/parsed.ts';
import { shownBitmap, straightBitmap } from './bitmapOf.ts';
import type { Bitmap, PictureCall, Taken } from './pictureCall.ts';
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

/** Does what is asked of a picture; unread with one line where this device cannot. */
export const answerPictureCall = async (call: PictureCall): Promise<Parsed<Taken | Bitmap>> => {
  try {
    return await answerTo(call);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return unread(phrase`this device cannot decode it: ${why.split('\n')[0] ?? ''}`);
  }
};
