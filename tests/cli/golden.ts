import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

const folder = join(import.meta.dirname, '..', 'golden');

/**
 * The text that is kept under `tests/golden/`. With GOLDEN=write it is first replaced by `text`:
 * read the difference before it goes in.
 */
export const golden = (path: string, text: string): string => {
  const file = join(folder, path);
  if (process.env['GOLDEN'] === 'write') {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return readFileSync(file, 'utf8');
};
