import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { browserFlags, findChromium } from './findChromium.ts';

const port = 4317;
const top = join(import.meta.dirname, '..');

/** Waits until the server answers, ten seconds at most. */
const answered = async (): Promise<void> => {
  for (let tries = 0; tries < 50; tries += 1) {
    const up = await fetch(`http://localhost:${port}/`).then(
      () => true,
      () => false,
    );
    if (up) return;
    await new Promise((done) => {
      setTimeout(done, 200);
    });
  }
  throw new Error(`the served program: expected an answer at port ${port} within 10 s`);
};

/** Takes the README's picture from the running program: the yard on which it opens. */
const take = async (): Promise<void> => {
  const server = spawn('npx', ['vite', 'preview', '--port', `${port}`, '--strictPort'], {
    cwd: top,
    detached: true,
  });
  const browser = await chromium.launch({ executablePath: findChromium(), args: browserFlags });
  try {
    await answered();
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(`http://localhost:${port}/`, { waitUntil: 'networkidle' });
    await page.getByRole('toolbar', { name: 'Tools' }).waitFor();
    await page.screenshot({ path: join(top, 'e2e', 'yard.png') });
  } finally {
    await browser.close();
    if (server.pid !== undefined) process.kill(-server.pid);
  }
};

await take();
