import { chromium, type Browser } from '@playwright/test';
import { browserFlags, findChromium } from '../../../e2e/findChromium.ts';
import { serveBuild, type Served } from '../../../e2e/servedBuild.ts';
import { figureOf, quantile } from '../measured.ts';
import { emptyBuild } from '../page/emptyBuild.ts';
import { programBuild } from '../page/programBuild.ts';
import type { Row } from '../row.ts';

/** How many times slower than it is the processor is made to be. */
const slowed = 4;

/** A page that is opened: where it is served from, and the mark that it sets when it was painted. */
interface Opened {
  readonly folder: string;
  readonly path: string;
  readonly mark: string;
}

/** Milliseconds from the beginning of a first visit, with nothing kept of any before, to a mark of the page. */
const coldStart = async (
  browser: Browser,
  served: Served,
  { folder, path, mark }: Opened,
): Promise<number> => {
  served.show(folder);
  const visit = await browser.newContext({
    serviceWorkers: 'block',
    viewport: { width: 1440, height: 900 },
  });
  try {
    const page = await visit.newPage();
    const session = await visit.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    await page.goto(`${served.address}${path}`, { waitUntil: 'commit' });
    return await page.evaluate(
      (name) =>
        new Promise<number>((told) => {
          new PerformanceObserver((list) => {
            const [found] = list.getEntriesByName(name);
            if (found !== undefined) told(found.startTime);
          }).observe({ type: 'mark', buffered: true });
        }),
      mark,
    );
  } finally {
    await visit.close();
  }
};

const openings = async (
  browser: Browser,
  served: Served,
  pages: { readonly ours: Opened; readonly theirs: Opened; readonly rounds: number },
) => {
  const pairs = { oursFirst: [] as [number, number][], theirsFirst: [] as [number, number][] };
  for (let round = -1; round < pages.rounds; round += 1) {
    const first = round % 2 === 0 ? 'oursFirst' : 'theirsFirst';
    const before = first === 'oursFirst' ? await coldStart(browser, served, pages.ours) : null;
    const empty = await coldStart(browser, served, pages.theirs);
    const own = before ?? (await coldStart(browser, served, pages.ours));
    // the browser itself starts cold in the round before the first
    if (round >= 0) pairs[first].push([own, empty]);
  }
  return pairs;
};

/** When one can begin to draw, in a few words: the pad and its tools come after the yard. */
const readyNote = async (
  browser: Browser,
  served: Served,
  { ours, rounds }: { readonly ours: Opened; readonly rounds: number },
): Promise<string> => {
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    times.push(await coldStart(browser, served, { ...ours, mark: 'program shown' }));
  }
  return `to draw in after ${quantile(times, 0.5).toFixed(0)} ms`;
};

/** A first visit until the yard is drawn and painted, on a processor made slower. */
export const coldStartRow: Row = {
  work: 'cold start to first drawn yard, 4× slowed processor',
  against: 'an empty React page',
  bar: 2.5,
  run: async ({ quick }) => {
    const program = await programBuild();
    const empty = await emptyBuild();
    const served = await serveBuild(program);
    const browser = await chromium.launch({ executablePath: findChromium(), args: browserFlags });
    try {
      const ours = { folder: program, path: '/?sample=back-yard', mark: 'yard painted' };
      const pairs = await openings(browser, served, {
        ours,
        theirs: { folder: empty.folder, path: '/index.html', mark: 'page painted' },
        rounds: quick ? 2 : 14,
      });
      const note = quick ? '' : await readyNote(browser, served, { ours, rounds: 5 });
      return figureOf(pairs, note);
    } finally {
      await browser.close();
      await served.stop();
      empty.remove();
    }
  },
};
