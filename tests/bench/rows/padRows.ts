import { figureOf, quantile } from '../measured.ts';
import { atRest, twoFrames, withPads, type PadPage, type Place } from '../page/padPage.ts';
import type { Figure, Pace, Row } from '../row.ts';

type Pairs = { oursFirst: [number, number][]; theirsFirst: [number, number][] };

/** The work of each of some moves of the pointer from a place, milliseconds; a small circle of whole pixels. */
const movesFrom = async ({ page, work }: PadPage, { x, y }: Place, count: number) => {
  const all: number[] = [];
  for (let n = 1; n <= count; n += 1) {
    all.push(
      await work(async () => {
        await page.mouse.move(x + (n % 8), y + ((n * 3) % 8));
        await twoFrames(page);
      }),
    );
  }
  return all;
};

const middleOf = ({ page }: PadPage): Promise<Place> =>
  page.evaluate(() => window.timedPad.middle());

/** The moves of a hand that pans with the middle button. */
const panned = async (pad: PadPage, count: number): Promise<number[]> => {
  const at = await middleOf(pad);
  await pad.page.mouse.move(at.x, at.y);
  await pad.page.mouse.down({ button: 'middle' });
  const all = await movesFrom(pad, at, count);
  await pad.page.mouse.up({ button: 'middle' });
  await atRest(pad);
  return all;
};

/** The same moves over a plain canvas that paints the whole scene for each. */
const plainly = async (pad: PadPage, count: number): Promise<number[]> => {
  const at = await middleOf(pad);
  await pad.page.evaluate(() => window.timedPad.plain('there'));
  await pad.page.mouse.move(at.x, at.y);
  await twoFrames(pad.page);
  const all = await movesFrom(pad, at, count);
  await pad.page.evaluate(() => window.timedPad.plain('away'));
  await atRest(pad);
  return all;
};

/** A picture that was gone on with is drawn from nothing half a second after; milliseconds. */
const untilSettled = 750;

/** The work from a view that is set until nothing is drawn any more; what a page at rest does is taken off. */
const untilRest = async (pad: PadPage, times: number, idle: number): Promise<number> => {
  const { page, work } = pad;
  const all = await work(async () => {
    await page.evaluate((by) => window.timedPad.move({ x: 7, y: 4, times: by }), times);
    await atRest(pad, untilSettled);
  });
  return Math.max(0, all - idle);
};

const both = (ours: readonly number[], theirs: readonly number[], into: [number, number][]): void =>
  ours.forEach((own, n) => into.push([own, theirs[n] ?? Number.NaN]));

/** Takes a gate by its middle, with so much of the yard in sight, and drags it about. */
const dragged = async (pad: PadPage, times: number, count: number): Promise<number[]> => {
  const { page } = pad;
  await page.evaluate(() => {
    const [gate, middle] = [window.timedPad.gate(1), window.timedPad.middle()];
    window.timedPad.move({ x: middle.x - gate.x, y: middle.y - gate.y, times: 1 });
  });
  await page.evaluate((by) => window.timedPad.move({ x: 0, y: 0, times: by }), times);
  await atRest(pad);
  const at = await page.evaluate(() => window.timedPad.gate(1));
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  const from = { x: at.x + 9, y: at.y };
  await page.mouse.move(from.x, from.y);
  await atRest(pad);
  const all = await movesFrom(pad, from, count);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  await page.evaluate((by) => window.timedPad.move({ x: 0, y: 0, times: 1 / by }), times);
  await atRest(pad);
  return all;
};

const againstPlain = async (
  pad: PadPage,
  ours: (count: number) => Promise<number[]>,
  { quick }: Pace,
): Promise<Figure> => {
  const pairs: Pairs = { oursFirst: [], theirsFirst: [] };
  const count = quick ? 5 : 40;
  if (!quick) await ours(4);
  const first = await ours(count);
  const plain = await plainly(pad, count);
  both(first, plain, pairs.oursFirst);
  const again = await plainly(pad, count);
  both(await ours(count), again, pairs.theirsFirst);
  return figureOf(pairs);
};

/** What the rows of the pad come to: all are timed in one go, in one browser. */
interface PadFigures {
  readonly pan: Figure;
  readonly panMany: Figure;
  readonly rest: Figure;
  readonly drag: Figure;
  readonly memory: Figure;
  /** Null of a quick run. */
  readonly zoom: Figure | null;
  readonly dragFar: Figure | null;
}

const restAgainstPlain = async (
  pad: PadPage,
  { times, idle }: { readonly times: number; readonly idle: number },
  { quick }: Pace,
): Promise<Figure> => {
  const pairs: Pairs = { oursFirst: [], theirsFirst: [] };
  const rounds = quick ? 2 : 8;
  for (let n = 0; n < rounds; n += 1) {
    const by = n % 2 === 0 ? times : 1 / times;
    if (n % 2 === 0) {
      const own = await untilRest(pad, by, idle);
      pairs.oursFirst.push([own, quantile(await plainly(pad, 3), 0.5)]);
    } else {
      const plain = quantile(await plainly(pad, 3), 0.5);
      pairs.theirsFirst.push([await untilRest(pad, by, idle), plain]);
    }
  }
  return figureOf(pairs);
};

const memoryOf = async (pad: PadPage): Promise<Figure> => {
  const before = await pad.heap();
  await pad.page.evaluate(() => window.timedPad.load(20_000));
  await atRest(pad, untilSettled);
  const taken = (await pad.heap()) - before;
  const typed = await pad.page.evaluate(() => window.timedPad.typedBytes());
  const ratio = taken / typed;
  const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
  const note = `${megabytes(taken)} against ${megabytes(typed)}`;
  return { ratio, orders: [ratio, ratio], ours: null, theirs: null, note };
};

const timed = (pace: Pace): Promise<PadFigures> =>
  withPads(async (open) => {
    const few = await open(5000);
    const plain = (ours: (count: number) => Promise<number[]>): Promise<Figure> =>
      againstPlain(few, ours, pace);
    const pan = await plain((count) => panned(few, count));
    const idle = await few.work(() => atRest(few, untilSettled));
    const rest = await restAgainstPlain(few, { times: 1, idle }, pace);
    const zoom = pace.quick ? null : await restAgainstPlain(few, { times: 1.2, idle }, pace);
    const drag = await plain((count) => dragged(few, 24, count));
    const dragFar = pace.quick ? null : await plain((count) => dragged(few, 1, count));
    const empty = await open(100);
    const memory = await memoryOf(empty);
    const pairs: Pairs = { oursFirst: [], theirsFirst: [] };
    const count = pace.quick ? 5 : 40;
    both(await panned(empty, count), await panned(few, count), pairs.oursFirst);
    const fewer = await panned(few, count);
    both(await panned(empty, count), fewer, pairs.theirsFirst);
    return { pan, panMany: figureOf(pairs), rest, zoom, drag, dragFar, memory };
  });

const once = new Map<boolean, Promise<PadFigures>>();

/** All rows of the pad are timed with the first of them. */
const figures = (pace: Pace): Promise<PadFigures> => {
  const known = once.get(pace.quick) ?? timed(pace);
  once.set(pace.quick, known);
  return known;
};

const row = (work: string, of: keyof PadFigures, bar: number, against: string): Row => ({
  work,
  against,
  bar,
  run: async (pace) => {
    const figure = (await figures(pace))[of];
    if (figure === null) throw new Error(`${work}: expected a whole run`);
    return figure;
  },
});

const inWholeRuns = (one: Row): Row => ({ ...one, only: 'whole runs' });

const plain = 'plain canvas repaint of the same scene';

/** Moves, edits and memory of the pad, by the time that the page's thread works until all is painted. */
export const padRows: readonly Row[] = [
  row('pan step, 5,000 posts', 'pan', 0.1, plain),
  row('pan step, 20,000 posts', 'panMany', 1.5, 'the same at 5,000 posts'),
  row('repaint at rest, 5,000 posts', 'rest', 1.3, plain),
  inWholeRuns(row('repaint at rest after a zoom, 5,000 posts', 'zoom', 1.3, plain)),
  row('drag a gate on a 5,000-post site, its leg in sight', 'drag', 0.2, plain),
  inWholeRuns(row('drag a gate on a 5,000-post site, all of it in sight', 'dragFar', 0.2, plain)),
  row('memory of the pad with 20,000 posts', 'memory', 20, "the scene's atoms as typed arrays"),
];
