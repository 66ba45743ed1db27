import { lackingParts } from './lackingParts.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { unread, type Parsed } from '../../units/parsed.ts';
import { makePng } from './makePng.ts';

/** A page that is to become a PNG, at so many dots per inch. */
export interface PngCall {
  readonly page: Page;
  readonly dpi: number;
}

const answerTo = async ({ page, dpi }: PngCall): Promise<Parsed<Uint8Array>> => {
  try {
    return await makePng(page, dpi);
  } catch {
    return unread(lackingParts);
  }
};

/** Pages are made into pictures here, so that the screen answers meanwhile. */
self.addEventListener('message', ({ data }: MessageEvent<PngCall>) => {
  void answerTo(data).then((answer) => self.postMessage(answer, { transfer: [] }));
});
