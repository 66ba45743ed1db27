import { expect, type Page } from '@playwright/test';

/**
 * Watches how long the page does not answer: gives the longest block since it was asked last,
 * milliseconds; 0 where none was as long as 50, which is what a browser reports.
 */
export const watchBlocks = async (page: Page): Promise<() => Promise<number>> => {
  await page.evaluate(() => {
    const blocks: number[] = [];
    Object.assign(window, { blocks });
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) blocks.push(duration);
    }).observe({ type: 'longtask', buffered: false });
  });
  const longest = () =>
    page.evaluate(async () => {
      // what was seen last is told a little later
      await new Promise((done) => setTimeout(done, 100));
      const { blocks } = window as unknown as { blocks: number[] };
      return Math.max(0, ...blocks.splice(0));
    });
  // a watch that sees nothing would find everything well
  await page.evaluate(() => {
    setTimeout(() => {
      for (const until = performance.now() + 150; performance.now() < until;);
    });
  });
  await page.waitForTimeout(200);
  expect(await longest()).toBeGreaterThan(140);
  return longest;
};
