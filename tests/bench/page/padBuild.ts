import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { build } from 'vite';

/** Builds the page with the pad as the program is built, into a folder of its own that `remove` takes away. */
export const padBuild = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lathline-'));
  await build({
    configFile: false,
    root: join(import.meta.dirname, 'padPage'),
    plugins: [react()],
    logLevel: 'error',
    worker: { format: 'es' },
    build: {
      outDir: folder,
      emptyOutDir: true,
      assetsInlineLimit: 0,
      target: 'es2023',
    },
  });
  return { folder, remove: () => rmSync(folder, { recursive: true }) };
};
