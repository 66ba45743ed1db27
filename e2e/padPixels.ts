import type { Page } from '@playwright/test';

/** Where on the pad, CSS pixels, and how many pixels to each side. */
interface Patch {
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

/**
 * The pixels of patches of the pad as its still sheets lie over one another, without what is live: red, green,
 * blue and alpha in a row.
 */
export const padPixels = (page: Page, patches: readonly Patch[]): Promise<number[][]> =>
  page.evaluate((asked) => {
    const pad = document.querySelector('.pad')?.getBoundingClientRect();
    if (pad === undefined) throw new Error('expected a pad');
    const seen = new OffscreenCanvas(Math.ceil(pad.width), Math.ceil(pad.height));
    const context = seen.getContext('2d', { willReadFrequently: true });
    const sheets = '.pad canvas:not([data-sheet=live])';
    for (const sheet of document.querySelectorAll<HTMLCanvasElement>(sheets)) {
      const { left, top, width, height } = sheet.getBoundingClientRect();
      if (width > 0) context?.drawImage(sheet, left - pad.left, top - pad.top, width, height);
    }
    return asked.map(({ x, y, half }) => [
      ...(context?.getImageData(x - half, y - half, 2 * half + 1, 2 * half + 1).data ?? []),
    ]);
  }, patches);
