import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { build, type Plugin } from 'vite';

const top = join(import.meta.dirname, '../..');
const folder = join(top, '.bench/built');

/** Modules find what lies beside them where they were, not where they are put together. */
const whereTheyWere: Plugin = {
  name: 'where-they-were',
  enforce: 'pre',
  transform: (code, id) =>
    code.includes('import.meta.dirname') && !id.includes('node_modules')
      ? code.replaceAll('import.meta.dirname', JSON.stringify(dirname(id)))
      : null,
};

// the code that is timed is put together as the program's is: run from its sources it would be slower than a reference
await build({
  configFile: false,
  root: top,
  logLevel: 'error',
  plugins: [whereTheyWere],
  ssr: { external: true },
  build: {
    ssr: join(import.meta.dirname, 'bench.ts'),
    outDir: folder,
    emptyOutDir: true,
    target: 'es2023',
    rolldownOptions: { output: { entryFileNames: 'bench.js' } },
  },
});

const { status } = spawnSync(
  process.execPath,
  [join(folder, 'bench.js'), ...process.argv.slice(2)],
  {
    stdio: 'inherit',
  },
);
process.exit(status ?? 1);
