import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

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

export default defineConfig({
  root: 'src',
  plugins: [react(), leaveOut, showSample],
  // so that a worker, too, fetches only what it is asked for
  worker: { format: 'es' },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    // one part for the program and one for the PDF writer: kB before compression
    chunkSizeWarningLimit: 1000,
  },
  test: {
    testTimeout: 30_000,
    root: '.',
    include: ['tests/**/*.test.{ts,tsx}'],
    setupFiles: ['tests/sameCases.ts'],
  },
});
