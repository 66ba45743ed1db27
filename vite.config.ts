import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import react from '@vitejs/plugin-react';
import type { Plugin, Rolldown } from 'vite';
import { defineConfig } from 'vitest/config';
import { pagePolicy, partHeaders } from './src/screens/offline/contentPolicy.ts';
import { addressesOf, workerName, type Parts } from './src/screens/offline/partsOf.ts';

/** Parts that jsPDF loads for HTML and SVG input, which no sheet uses: left out of the bundle. */
const absent = ['html2canvas', 'canvg', 'dompurify'];

const leaveOut: Plugin = {
  name: 'leave-out',
  enforce: 'pre',
  resolveId: (id) => (absent.includes(id) ? '\0absent' : null),
  load: (id) => (id === '\0absent' ? 'export {};' : null),
};

/** The bare address of the served program opens on a sample yard; `/index.html` on what is kept. */
const showSample: Plugin = {
  name: 'show-sample',
  configurePreviewServer: (server) => {
    server.middlewares.use((request, response, next) => {
      if (request.url !== '/') return next();
      response.writeHead(302, { location: '/?sample=back-yard' }).end();
    });
  },
};

/** The built page carries its content policy itself, whatever serves it. */
const carryPolicy: Plugin = {
  name: 'carry-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
      injectTo: 'head-prepend',
    },
  ],
};

/** Files that are served as they are. */
const publicDir = 'src/public';

/** Tells the service worker which files this build has; its bytes change where any of them does. */
const listParts: Plugin = {
  name: 'list-parts',
  apply: 'build',
  generateBundle: {
    order: 'post',
    handler: (_, bundle) => {
      const worker = bundle[workerName];
      if (worker?.type !== 'asset') throw new Error(`expected ${workerName} in the build`);
      const asTheyAre = readdirSync(publicDir);
      const digest = createHash('sha256');
      for (const name of asTheyAre) digest.update(readFileSync(join(publicDir, name)));
      for (const part of Object.values(bundle)) {
        digest.update(part.fileName).update(part.type === 'chunk' ? part.code : part.source);
      }
      const parts: Parts = {
        version: digest.digest('hex').slice(0, 16),
        addresses: addressesOf([...Object.keys(bundle), ...asTheyAre]),
      };
      const listed = `(${JSON.stringify(parts)})`;
      worker.source = String(worker.source).replace('partsOfBuild', () => listed);
    },
  },
};

/** Loaded before the yard is first drawn: this and all that it imports, beside the page's own script. */
const firstPart = '/src/screens/first/openFirst.ts';

/** The most script that may be fetched before the yard is first drawn, bytes after gzip. */
const mostFirst = 200_000;

/** The parts of script that are fetched before the yard is first drawn, the page's own first. */
const firstParts = (bundle: Rolldown.OutputBundle): readonly Rolldown.OutputChunk[] => {
  const parts = Object.values(bundle).filter((part) => part.type === 'chunk');
  const opened = parts.find(({ moduleIds }) => moduleIds.some((id) => id.endsWith(firstPart)));
  if (opened === undefined) throw new Error(`expected ${firstPart} in the build`);
  const found = new Set(parts.filter(({ isEntry }) => isEntry)).add(opened);
  // a set goes on with what is added while it is walked
  for (const { imports } of found) {
    for (const part of parts) if (imports.includes(part.fileName)) found.add(part);
  }
  return [...found];
};

/** The modules of the first drawing that are not the page's own: one part, since each part takes its time. */
const firstModules = new Set<string>();

/** The page asks for all script of its first drawing at once, and no build has more of it than it may. */
const firstScript: Plugin = {
  name: 'first-script',
  apply: 'build',
  buildEnd() {
    const importsOf = (ids: Iterable<string>): Set<string> => {
      const found = new Set(ids);
      for (const id of found) {
        for (const next of this.getModuleInfo(id)?.importedIds ?? []) found.add(next);
      }
      return found;
    };
    const ids = [...this.getModuleIds()];
    const own = importsOf(ids.filter((id) => this.getModuleInfo(id)?.isEntry === true));
    firstModules.clear();
    for (const id of importsOf(ids.filter((one) => one.endsWith(firstPart)))) {
      if (!own.has(id)) firstModules.add(id);
    }
  },
  transformIndexHtml: {
    order: 'post',
    handler: (_, { bundle }) =>
      firstParts(bundle ?? {})
        .filter(({ isEntry }) => !isEntry)
        .map(({ fileName }) => ({
          tag: 'link',
          attrs: { rel: 'modulepreload', crossorigin: true, href: `/${fileName}` },
          injectTo: 'head',
        })),
  },
  generateBundle: {
    order: 'post',
    handler: (_, bundle) => {
      const size = firstParts(bundle).reduce((sum, { code }) => sum + gzipSync(code).length, 0);
      const told = `${(size / 1000).toFixed(1)} kB of script after gzip before the yard is first drawn`;
      if (size > mostFirst) throw new Error(`${told}: expected ${mostFirst / 1000} kB at most`);
      console.log(told);
    },
  },
};

/** What a test says that changes its whole process: the language it speaks, modules put in place of others. */
const changing = /speak(By|Named|Anew)|pseudoLanguage|vi\.(mock|resetModules|stubGlobal)/;

const isAlone = (file: string): boolean =>
  file.startsWith('tests/cli/') || changing.test(readFileSync(file, 'utf8'));

/**
 * Tests that change what a whole process has, and those of the command line, have one each; all others share
 * the modules that they load, which takes a third of the time.
 */
const alone = readdirSync('tests', { encoding: 'utf8', recursive: true })
  .map((file) => `tests/${file.replaceAll('\\', '/')}`)
  .filter((file) => /\.test\.tsx?$/.test(file) && isAlone(file));

export default defineConfig({
  root: 'src',
  plugins: [react(), leaveOut, showSample, carryPolicy, firstScript, listParts],
  worker: {
    // so that a worker, too, fetches only what it is asked for
    format: 'es',
    plugins: () => [leaveOut],
    rolldownOptions: {
      output: {
        // one is known by its address: a service worker has the folder that it lies in
        entryFileNames: ({ name }) =>
          name === 'serviceWorker' ? workerName : 'assets/[name]-[hash].js',
      },
    },
  },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    // one part for the program and one for the PDF writer: kB before compression
    chunkSizeWarningLimit: 1000,
    rolldownOptions: {
      output: {
        // nearly all of it is called at once: a browser that knows the hint compiles it beside the page's thread
        postBanner: ({ name }) => (name === 'first' ? '//# allFunctionsCalledOnLoad' : ''),
        codeSplitting: {
          // what the page's own script has stays there: it speaks before anything else is loaded
          includeDependenciesRecursively: false,
          groups: [{ name: 'first', test: (id) => firstModules.has(id) }],
        },
      },
    },
  },
  preview: { headers: partHeaders },
  test: {
    testTimeout: 30_000,
    root: '.',
    setupFiles: ['tests/sameCases.ts'],
    // else one core of every machine is kept free, which of two is half
    maxWorkers: availableParallelism(),
    projects: [
      {
        extends: true,
        test: { name: 'alone', include: alone, isolate: true },
      },
      {
        extends: true,
        test: {
          name: 'together',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: alone,
          isolate: false,
          setupFiles: ['tests/sameCases.ts', 'tests/oneLanguage.ts'],
        },
      },
    ],
  },
});
