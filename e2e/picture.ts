import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { browserFlags, findChromium } from './findChromium.ts';
import { withProgram } from './servedProgram.ts';

/** Takes the README's picture from the running program: the yard on which it opens. */
const take = async (address: string): Promise<void> => {
  const browser = await chromium.launch({ executablePath: findChromium(), args: browserFlags });
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(`${address}/`, { waitUntil: 'networkidle' });
    await page.getByRole('toolbar', { name: 'Tools' }).waitFor();
    await page.screenshot({ path: join(import.meta.dirname, 'yard.png') });
  } finally {
    await browser.close();
  }
};

await withProgram(4317, take);
