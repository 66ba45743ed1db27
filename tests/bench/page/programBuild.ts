import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';

const top = join(import.meta.dirname, '../../..');
const folder = join(top, 'dist');

const madeOf = ['src', 'sample-sites', 'vite.config.ts', 'package-lock.json'];

const changedAt = (path: string): number => {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(0, ...readdirSync(path).map((name) => changedAt(join(path, name))));
};

/** The folder of the built program: the last build, or a new one where something was changed since. */
export const programBuild = async (): Promise<string> => {
  const built = changedAt(join(folder, 'index.html'));
  if (madeOf.some((name) => changedAt(join(top, name)) > built)) {
    await build({ configFile: join(top, 'vite.config.ts'), logLevel: 'error' });
  }
  return folder;
};
