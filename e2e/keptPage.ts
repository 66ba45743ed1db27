import type { Page } from '@playwright/test';

/** What the screen says lies on the device for certain: the job, how often it was written, its version's number. */
export const keptOf = (page: Page): Promise<{ job: string; writes: number; at: number }> =>
  page.evaluate(() => {
    const [job = '', writes, at] = (document.documentElement.dataset['kept'] ?? '').split(' ');
    return { job, writes: Number(writes), at: Number(at) };
  });

/** Waits until everything that was done lies on the device. */
export const allKept = async (page: Page): Promise<void> => {
  await page.waitForFunction(() => document.documentElement.dataset['keptAll'] === 'true');
};
