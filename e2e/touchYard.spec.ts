import { expect, test, type CDPSession, type Locator, type Page } from '@playwright/test';
import { layOutSite } from '../src/engine/layOutSite.ts';
import { formatLength } from '../src/units/formatLength.ts';
import { popplerText } from './readPdf.ts';
import { yardPage, type Way } from './yardPage.ts';

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Fingers on the screen, as the device reports them. */
const fingers = async (page: Page) => {
  const device: CDPSession = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: readonly Spot[]) =>
    device.send('Input.dispatchTouchEvent', { type, touchPoints: [...touchPoints] });
  return {
    /** Two fingers that go from two places to two others, and lift. */
    two: async (from: readonly [Spot, Spot], to: readonly [Spot, Spot]) => {
      await touch('touchStart', from);
      for (const share of [0.25, 0.5, 0.75, 1])
        await touch(
          'touchMove',
          from.map(({ x, y }, n) => ({
            x: x + share * ((to[n]?.x ?? x) - x),
            y: y + share * ((to[n]?.y ?? y) - y),
          })),
        );
      await touch('touchEnd', []);
    },
    /** A finger that rests at a place, rolls a little, and lifts. */
    rest: async ({ x, y }: Spot) => {
      await touch('touchStart', [{ x, y }]);
      await touch('touchMove', [{ x: x + 2, y: y + 1 }]);
      await page.waitForTimeout(800);
      await touch('touchEnd', []);
    },
  };
};

/** Taps the signs of a length on the pad's own keys. */
const tapKeys = async (keys: Locator, signs: readonly string[]): Promise<void> => {
  const names: Readonly<Record<string, string>> = { "'": 'feet', '"': 'inches' };
  for (const sign of signs)
    await keys.getByRole('button', { name: names[sign] ?? sign, exact: true }).tap();
};

test('a yard is drawn, checked and printed by fingers alone', async ({ page }) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  const tap = (name: string | RegExp) => page.getByRole('button', { name }).tap();
  const tools = page.getByRole('toolbar', { name: 'Tools' });
  const piece = async (signs: readonly string[], way: Way): Promise<void> => {
    await yard.entry.getByLabel('Length', { exact: true }).tap();
    await tapKeys(page.getByRole('group', { name: 'Keys for lengths' }), signs);
    await yard.entry.getByRole('button', { name: way }).tap();
  };

  await tools.getByRole('button', { name: 'Fence' }).tap();
  await yard.pressAt(120, 330);
  await piece(['3', '6', "'", '6', '1/2', '"'], 'North, up');
  await piece(['5', '2', "'"], 'East, to the right');
  await piece(['3', '6', "'"], 'South, down');
  // what was typed wrong is taken back where the thumb is
  await yard.entry.getByRole('button', { name: 'Take back' }).tap();
  await piece(['3', '6', "'", '6', '1/2', '"'], 'South, down');
  await yard.entry.getByRole('button', { name: 'Finish' }).tap();
  await tap('Show all');
  const drawn = await yard.saved();
  const [line] = Object.values(layOutSite(drawn).lines);
  expect(line?.legs.map(({ length }) => length)).toEqual(
    [438.5, 624, 438.5].map((length) => expect.closeTo(length, 6)),
  );

  const hand = await fingers(page);
  const box = await yard.pad.boundingBox();
  if (box === null) throw new Error('the pad is not on the screen');
  const [middle, centre] = [box.x + box.width / 2, box.y + box.height / 2];
  const before = await yard.pad.getAttribute('data-view');
  await hand.two(
    [
      { x: middle - 40, y: centre },
      { x: middle + 40, y: centre },
    ],
    [
      { x: middle - 80, y: centre + 60 },
      { x: middle + 80, y: centre + 60 },
    ],
  );
  const [scale = 0] = (before ?? '').split(' ').map(Number);
  const [larger = 0] = ((await yard.pad.getAttribute('data-view')) ?? '').split(' ').map(Number);
  expect(larger / scale).toBeCloseTo(2, 1);
  expect(await yard.saved()).toEqual(drawn);
  await tap('Show all');

  await tools.getByRole('button', { name: 'Gate' }).tap();
  const marks = Object.values(drawn.marks);
  const [left, back] = [Math.min(...marks.map(({ x }) => x)), Math.max(...marks.map(({ y }) => y))];
  await yard.pressGround(left + 312, back);
  const site = await yard.saved();
  await tap(/^Undo/);
  expect((await yard.saved()).gates).toEqual({});
  await tap(/^Redo/);
  expect(await yard.saved()).toEqual(site);
  const low = page.viewportSize()?.height ?? 0;
  expect((await page.getByRole('button', { name: /^Undo/ }).boundingBox())?.y).toBeGreaterThan(
    low / 2,
  );
  const gate = Object.values(layOutSite(site).gates)[0];
  expect(gate?.placed).toBe(true);

  // with the tool for fence in hand a finger rests on the gate: its card comes up, and nothing is drawn
  await tools.getByRole('button', { name: 'Fence' }).tap();
  const view = (await yard.pad.getAttribute('data-view')) ?? '';
  const [by = 1, x = 0, y = 0] = view.split(' ').map(Number);
  await hand.rest({ x: box.x + x + (left + 312) * by, y: box.y + y - back * by });
  await expect(tools.getByRole('button', { name: 'Select' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await expect(page.getByRole('button', { name: 'Put down' })).toBeVisible();
  await expect(page.getByRole('heading', { name: /gate/i }).first()).toBeInViewport();
  await page.getByRole('button', { name: 'Put down' }).tap();
  expect(await yard.saved()).toEqual(site);

  await page.getByRole('link', { name: 'Openings', exact: true }).tap();
  const opening = formatLength(gate?.opening.target ?? (0 as never), site.lengths);
  await expect(page.getByText(opening).first()).toBeVisible();
  await page.getByLabel('Initials').first().fill('AB');
  await page.getByRole('button', { name: 'Sign off', exact: true }).first().tap();
  await expect(page.getByText(/Signed off by AB/).first()).toBeVisible();

  await page.getByRole('link', { name: 'Crew sheet', exact: true }).tap();
  const file = await yard.download(() => page.getByRole('button', { name: 'Download PDF' }).tap());
  expect(popplerText(file)).toContain(opening);
});
