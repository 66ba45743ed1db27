import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { iconsFrom } from './iconsFrom.ts';

const require = createRequire(import.meta.url);
const folder = join(import.meta.dirname, '..', 'public');
const raster = readFileSync(require.resolve('@resvg/resvg-wasm/index_bg.wasm'));
const icons = await iconsFrom(readFileSync(join(folder, 'icon.svg'), 'utf8'), raster);
for (const [name, bytes] of icons) writeFileSync(join(folder, name), bytes);
