import { describe, expect, it } from 'vitest';
import type { Page } from '../../../src/drawing/sheet/page.ts';
import { laid } from '../../../src/drawing/sheet/papers.ts';
import { dpiRange } from '../../../src/exporters/png/dpiRange.ts';
import { mostPixels, pixelsOf } from '../../../src/exporters/png/pixelsOf.ts';
import { toPng } from '../../../src/exporters/png/toPng.ts';
import { scene } from '../scene.ts';
import { pngParts } from './pngParts.ts';
import { readPng } from './readPng.ts';

const made = async (page: Page, dpi: number): Promise<Uint8Array> => {
  const png = await toPng(page, pngParts, dpi);
  if (!png.ok) throw new Error(png.reason);
  return png.value;
};

describe('toPng', { timeout: 60_000 }, () => {
  it.each([
    ['letter', 'portrait', 72, [612, 792]],
    ['a4', 'landscape', 100, [1169, 827]],
    ['a3', 'portrait', 72, [842, 1191]],
  ] as const)(
    '[X60] %s, %s, at %i dpi is %j pixels and prints at true size',
    async (name, way, dpi, size) => {
      const png = readPng(await made({ ...scene, paper: laid(name, way) }, dpi));
      expect([png.width, png.height]).toEqual(size);
      const [across, down, unit] = png.physical ?? [0, 0, 0];
      expect([across, down, unit]).toEqual([across, across, 1]);
      // a metre is 39.37 in: the paper comes out to a pixel
      const paper = laid(name, way);
      expect(Math.abs((png.width / across / 0.0254 - paper.width) * dpi)).toBeLessThan(1);
      expect(Math.abs((png.height / down / 0.0254 - paper.height) * dpi)).toBeLessThan(1);
    },
  );

  it('[X60] shows what the page has where it has it, letters too', async () => {
    const { at } = readPng(await made(scene, 100));
    expect(at(5, 5)).toEqual([255, 255, 255]);
    // the dash of the fence from 1 to 3 in begins in its pen, 0.02 in wide, at 1 in down
    expect(Math.max(...at(104, 100))).toBeLessThan(120);
    const letters = Array.from({ length: 120 }, (_, x) => at(100 + x, 495)).filter(
      ([red = 255]) => red < 120,
    );
    expect(letters.length).toBeGreaterThan(8);
  });

  it('[X60] the same page gives the same bytes, another resolution others', async () => {
    const first = Buffer.from(await made(scene, 72));
    expect(first.equals(await made(scene, 72))).toBe(true);
    expect(first.equals(await made(scene, 73))).toBe(false);
  });

  it('[X60] lettering is that of the sheet, not some other font’s: without fonts there is none', async () => {
    const none = { ...pngParts, regular: new Uint8Array(), bold: new Uint8Array() };
    const bare = await toPng(scene, none, 100);
    if (!bare.ok) throw new Error(bare.reason);
    const { at } = readPng(bare.value);
    expect(Array.from({ length: 120 }, (_, x) => at(100 + x, 495)[0])).toEqual(
      Array.from({ length: 120 }, () => 255),
    );
  });

  it.each([71, 601, 100.5, NaN, -72, 0])('[X60] %d dpi is refused in one line', async (dpi) => {
    expect(await toPng(scene, pngParts, dpi)).toEqual({
      ok: false,
      reason: `PNG at ${dpi} dpi: expected a whole number from 72 to 600`,
    });
  });

  it('[X60] a page that is too large is refused in one line that says what fits, and that does', () => {
    const paper = laid('arch-d', 'landscape');
    const large = pixelsOf(paper, dpiRange.most);
    expect(large).toEqual({
      ok: false,
      reason:
        'PNG of ARCH D, wide at 600 dpi: 312 million pixels are too many to make: expected 304 dpi or less',
    });
    const fits = pixelsOf(paper, 304);
    if (!fits.ok) throw new Error(fits.reason);
    expect(fits.value.width * fits.value.height).toBeLessThanOrEqual(mostPixels);
    expect(pixelsOf(paper, 305).ok).toBe(false);
  });
});
