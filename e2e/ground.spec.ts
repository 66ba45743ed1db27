import { fileURLToPath } from 'node:url';
import { expect, test, type Page } from '@playwright/test';
import { keepOutsOf } from '../src/engine/keepOut/keepOutsOf.ts';
import { reachInto } from '../src/engine/keepOut/reachInto.ts';
import { layOutSite } from '../src/engine/layOutSite.ts';
import type { Site } from '../src/site/site.ts';
import { formatLength } from '../src/units/formatLength.ts';
import { inches } from '../src/units/inches.ts';
import { parseLength } from '../src/units/parseLength.ts';
import { dragGround } from './dragGround.ts';
import { yardPage } from './yardPage.ts';

/** A fence of 60 ft to the east, drawn on an empty pad; where its first mark stands, in inches. */
const drawFence = async (page: Page) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await yard.take('Fence');
  await yard.pressAt(120, 260);
  await yard.piece(`60'`, 'East, to the right');
  await yard.finish();
  await page.getByRole('button', { name: 'Show all' }).click();
  const [first] = Object.values((await yard.saved()).marks).toSorted((a, b) => a.x - b.x);
  if (first === undefined) throw new Error('expected a mark');
  return { yard, ...first };
};

const stops = (site: Site) => layOutSite(site).flags.filter(({ level }) => level === 'stop');

/** Holes of line posts that reach into ground to keep out of. */
const holesInside = (site: Site): string[] =>
  [...layOutSite(site).posts.values()]
    .filter(({ kind, at, hole }) =>
      keepOutsOf(site).some(
        (keepOut) => kind === 'line' && reachInto(keepOut, at, hole.diameter / 2) > 1e-6,
      ),
    )
    .map(({ tag }) => tag);

test('posts step aside for a gas line, and a gate in its zone is stopped until it is moved @tablet', async ({
  page,
}) => {
  const { yard, x, y } = await drawFence(page);
  const before = await yard.saved();
  // equal bays of 10 ft put a post where the service is to run
  expect([...layOutSite(before).posts.values()].some(({ at }) => at.x === x + 240)).toBe(true);

  await yard.take('Utility');
  await yard.pressGround(x + 240, y - 90);
  await yard.piece(`15'`, 'North, up');
  await yard.finish();
  const crossed = await yard.saved();
  expect(Object.values(crossed.features).map(({ kind }) => kind)).toEqual(['utility']);
  expect(holesInside(crossed)).toEqual([]);
  expect(stops(crossed)).toEqual([]);
  expect([...layOutSite(crossed).posts.values()].some(({ at }) => at.x === x + 240)).toBe(false);

  await yard.take('Gate');
  await yard.pressGround(x + 245, y);
  const gated = await yard.saved();
  const [stop] = stops(gated);
  expect(stop?.rule).toBe('hole in a keep-out');
  const told = /move the gate (.+) towards the (start|end) of its leg/.exec(stop?.message ?? '');
  const by = parseLength(told?.[1] ?? '', gated.lengths.system);
  if (!by.ok) throw new Error(stop?.message ?? 'expected a stop');
  await yard.onCard(async () => {
    const [gate] = Object.values(gated.gates);
    await page.getByText('Name and place').click();
    await page.getByLabel('Measured from').selectOption({ label: 'Start of leg' });
    const field = page.getByLabel('To the near post’s centre');
    const was = parseLength(await field.inputValue(), gated.lengths.system);
    if (!was.ok || gate === undefined) throw new Error('expected a distance');
    const to = inches(was.value + (told?.[2] === 'end' ? 1 : -1) * (by.value + 1 / 8));
    await field.fill(formatLength(to, gated.lengths));
    await field.press('Enter');
  });
  expect(stops(await yard.saved())).toEqual([]);
});

test('a gate that opens uphill meets the ground, and is clear when it opens the other way @desk', async ({
  page,
}) => {
  const { yard, x, y } = await drawFence(page);
  await yard.take('Gate');
  await yard.pressGround(x + 360, y);

  // 2 in 9 up to the north, from shots on both sides of the fence
  await yard.take('Grade shot');
  const entry = page.getByRole('form', { name: 'Height of this grade shot' });
  for (const [east, north, height] of [
    [4, -90, '-20"'],
    [716, -90, '-20"'],
    [4, 90, '20"'],
    [716, 90, '20"'],
  ] as const) {
    // the pad moves aside for the field of the height
    await page.getByRole('button', { name: 'Show all' }).click();
    await yard.pressGround(x + east, y + north);
    await entry.getByLabel(/^Height/).fill(height);
    await entry.getByRole('button', { name: 'Set', exact: true }).click();
    await expect(entry).toBeHidden();
  }
  const sloped = await yard.saved();
  expect(Object.values(sloped.shots)).toHaveLength(4);
  const opens = async (side: 'Left of line' | 'Right of line'): Promise<void> => {
    await yard.take('Select');
    await page.getByRole('button', { name: 'Show all' }).click();
    // another tap on what is selected takes what lies under it
    await page.keyboard.press('Escape');
    await yard.pressGround(x + 360, y);
    await yard.onCard(async () => {
      const field = page.getByLabel('Opens to the');
      if (!(await field.isVisible())) await page.getByText('How it closes').click();
      await field.selectOption({ label: side });
    });
  };
  // the fence runs east: uphill is to its left
  await opens('Left of line');
  const [stop] = stops(await yard.saved());
  expect(stop?.rule).toBe('leaf meets the ground');
  expect(stop?.message).toContain('open it the other way');
  await opens('Right of line');
  expect(stops(await yard.saved())).toEqual([]);
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(stops(await yard.saved())[0]?.rule).toBe('leaf meets the ground');
});

test('a line post that is dragged is held there, also after a reload, until it is let go @phone', async ({
  page,
}) => {
  const { yard, x, y } = await drawFence(page);
  await yard.take('Select');
  await yard.pressGround(x + 240, y);
  await dragGround(page, { x: x + 240, y }, { x: x + 280, y });
  const held = await yard.saved();
  const [pin] = Object.values(held.pins);
  expect(pin?.holds).toEqual({ kind: 'post' });
  const stood = layOutSite(held).posts.get('post:pin:1');
  expect(Math.abs((stood?.at.x ?? 0) - x - 280)).toBeLessThan(8);
  await page.reload();
  expect((await yard.saved()).pins).toEqual(held.pins);
  await yard.pressGround(stood?.at.x ?? 0, y);
  await yard.onCard(() => page.getByRole('button', { name: 'Let it go' }).click());
  expect((await yard.saved()).pins).toEqual({});
});

test('the ground under a fence is shown under its tape and folded away', async ({ page }) => {
  await page.goto('/index.html');
  await page.getByRole('button', { name: 'Job & file' }).click();
  const hill = new URL('../sample-sites/hillside.site.json', import.meta.url);
  await page.getByLabel('Site file to open').setInputFiles(fileURLToPath(hill));
  await expect(page.getByRole('dialog')).toBeHidden();
  // the tape of the fence that was opened, not that of the empty pad
  await expect(page.getByRole('button', { name: 'Hook other end' })).toBeVisible();
  const pull = page.getByRole('button', { name: 'Pull out tape' });
  if (await pull.isVisible()) await pull.click();
  const key = page.getByRole('button', { name: 'Profile', exact: true });
  const tape = page.getByRole('region', { name: 'Tape of the fence line' });
  await expect(key).toHaveAttribute('aria-pressed', 'false');
  const folded = (await tape.boundingBox())?.height ?? 0;
  await key.click();
  await expect(key).toHaveAttribute('aria-pressed', 'true');
  await expect
    .poll(async () => (await tape.boundingBox())?.height ?? 0)
    .toBeGreaterThan(folded + 60);
  await key.click();
  await expect.poll(async () => (await tape.boundingBox())?.height ?? 0).toBe(folded);
});
