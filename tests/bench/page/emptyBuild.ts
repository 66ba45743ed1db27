import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { build } from 'vite';

/** A built page in a folder of its own that `remove` takes away. */
export interface EmptyBuild {
  readonly folder: string;
  readonly remove: () => void;
}

/** Builds the empty React page as the program is built. */
export const emptyBuild = async (): Promise<EmptyBuild> => {
  const folder = mkdtempSync(join(tmpdir(), 'lathline-'));
  await build({
    configFile: false,
    root: join(import.meta.dirname, 'emptyPage'),
    plugins: [react()],
    logLevel: 'error',
    build: { outDir: folder, emptyOutDir: true, assetsInlineLimit: 0 },
  });
  return { folder, remove: () => rmSync(folder, { recursive: true }) };
};
