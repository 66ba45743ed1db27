import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { iconsFrom } from '../../src/cli/iconsFrom.ts';

const require = createRequire(import.meta.url);
const publicFile = (name: string): Buffer =>
  readFileSync(new URL(`../../src/public/${name}`, import.meta.url));

/** Sides of a PNG: RFC 2083, the chunk IHDR comes first with width and height. */
const sidesOf = (png: Uint8Array): string => {
  const view = new DataView(png.buffer, png.byteOffset);
  return `${view.getUint32(16)}x${view.getUint32(20)}`;
};

interface Manifest {
  readonly icons: readonly {
    readonly src: string;
    readonly sizes: string;
    readonly type: string;
  }[];
}

it('the icons are those that the drawing gives, and as large as the manifest says', async () => {
  const raster = readFileSync(require.resolve('@resvg/resvg-wasm/index_bg.wasm'));
  const icons = await iconsFrom(publicFile('icon.svg').toString('utf8'), raster);
  for (const [name, bytes] of icons) {
    expect(publicFile(name).equals(bytes), `${name}: npm run icons`).toBe(true);
  }
  const manifest = JSON.parse(publicFile('manifest.webmanifest').toString('utf8')) as Manifest;
  const pngs = manifest.icons.filter(({ type }) => type === 'image/png');
  expect(pngs.map(({ src }) => src.slice(2))).toEqual([...icons.keys()]);
  for (const { src, sizes } of pngs) expect(sidesOf(publicFile(src.slice(2)))).toBe(sizes);
});
