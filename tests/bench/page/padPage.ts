import { chromium, type CDPSession, type Page } from '@playwright/test';
import { browserFlags, findChromium } from '../../../e2e/findChromium.ts';
import { serveBuild } from '../../../e2e/servedBuild.ts';
import { padBuild } from './padBuild.ts';
import './padPage/timedPad.ts';

/** A place on the page, CSS pixels. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The program with a large yard on its pad, in a browser, to be timed. */
export interface PadPage {
  readonly page: Page;
  /** Milliseconds for which the page's one thread was at work while something was done, drawing and painting included. */
  readonly work: (deed: () => Promise<unknown>) => Promise<number>;
  /** Bytes of the heap after garbage was collected. */
  readonly heap: () => Promise<number>;
}

const sized = { width: 1440, height: 900 } as const;

/** Two frames: what a move leads to is drawn in the first or, where it can wait, the second. */
export const twoFrames = (page: Page): Promise<unknown> =>
  page.evaluate(
    () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
  );

/** The page does nothing while it works for no more of a spell than this; milliseconds. */
const [spell, idleWork, mostSpells] = [120, 2, 200] as const;

/**
 * Waits until nothing is drawn any more: letters find their places bit by bit. At least so many milliseconds, where
 * something is still to come that waits for so long.
 */
export const atRest = async ({ page, work }: PadPage, least = 0): Promise<void> => {
  if (least > 0) await page.waitForTimeout(least);
  for (let n = 0; n < mostSpells; n += 1) {
    if ((await work(() => page.waitForTimeout(spell))) < idleWork) return;
  }
};

const worked = async (session: CDPSession): Promise<number> => {
  const { metrics } = await session.send('Performance.getMetrics');
  const found = metrics.find(({ name }) => name === 'TaskDuration')?.value;
  if (found === undefined) throw new Error('expected the time of tasks among the metrics');
  return found * 1000;
};

const openPage = async (page: Page, address: string): Promise<PadPage> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  await page.goto(`${address}/index.html`);
  await page.waitForFunction(() => 'timedPad' in window);
  return {
    page,
    work: async (deed) => {
      const before = await worked(session);
      await deed();
      return (await worked(session)) - before;
    },
    heap: async () => {
      await session.send('HeapProfiler.collectGarbage');
      const { usedSize } = await session.send('Runtime.getHeapUsage');
      return usedSize;
    },
  };
};

/** Builds and serves the page, hands it out in a context of its own for each yard asked for, and takes all away. */
export const withPads = async <T>(
  timed: (open: (posts: number) => Promise<PadPage>) => Promise<T>,
): Promise<T> => {
  const built = await padBuild();
  const served = await serveBuild(built.folder);
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: [...browserFlags, '--js-flags=--expose-gc'],
  });
  try {
    return await timed(async (posts) => {
      const context = await browser.newContext({ viewport: sized, serviceWorkers: 'block' });
      const opened = await openPage(await context.newPage(), served.address);
      await opened.page.evaluate((count) => window.timedPad.load(count), posts);
      await atRest(opened, 600);
      return opened;
    });
  } finally {
    await browser.close();
    await served.stop();
    built.remove();
  }
};
