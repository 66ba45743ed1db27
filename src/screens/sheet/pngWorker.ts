import type { Page } from '../../drawing/sheet/page.ts';
import { unread, type Parsed } from '../../units/parsed.ts';
import { speakNamed } from '../speakNamed.ts';
import { lackingParts } from './lackingParts.ts';

/** A page that is to become a PNG, at so many dots per inch. */
export interface PngCall {
  readonly page: Page;
  readonly dpi: number;
}

const maker = speakNamed(() => import('./makePng.ts'));

const answerTo = async ({ page, dpi }: PngCall): Promise<Parsed<Uint8Array>> => {
  const { makePng } = await maker;
  // the language is spoken by now
  return makePng(page, dpi).catch(() => unread(lackingParts()));
};

/** Pages are made into pictures here, so that the screen answers meanwhile. */
self.addEventListener('message', ({ data }: MessageEvent<PngCall>) => {
  answerTo(data).then(
    (answer) => self.postMessage(answer, { transfer: [] }),
    // where it cannot be had the worker has failed
    () => undefined,
  );
});
