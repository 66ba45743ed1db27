import { expect, test, type Page } from '@playwright/test';
import { bowKnob } from '../src/editor/bowKnob.ts';
import { layOutSite } from '../src/engine/layOutSite.ts';
import type { SitePoint } from '../src/geometry/point.ts';
import { arcOf, nearestOnTrack } from '../src/geometry/track.ts';
import type { Site } from '../src/site/site.ts';
import { dragGround } from './dragGround.ts';
import { yardPage } from './yardPage.ts';

/** A fence of 60 ft to the east, drawn on an empty pad, and its leg selected. */
const drawLeg = async (page: Page) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await yard.take('Fence');
  await yard.pressAt(120, 300);
  await yard.piece(`60'`, 'East, to the right');
  await yard.finish();
  await page.getByRole('button', { name: 'Show all' }).click();
  const [first] = Object.values((await yard.saved()).marks).toSorted((a, b) => a.x - b.x);
  if (first === undefined) throw new Error('expected a mark');
  await yard.take('Select');
  // halfway between two posts
  await yard.pressGround(first.x + 60, first.y);
  return { yard, ...first };
};

/** The one leg of a site as it is laid out. */
const legOf = (site: Site) => {
  const leg = layOutSite(site).lines['line:1']?.legs[0];
  if (leg === undefined) throw new Error('expected a leg');
  return leg;
};

const knobOf = (site: Site): SitePoint => {
  const { id } = legOf(site);
  const knob = bowKnob(layOutSite(site), { kind: 'leg', line: 'line:1', id });
  if (knob === null) throw new Error('expected a knob');
  return knob.at;
};

test('a leg is bowed by its knob and set to a radius; its bays become as short as that asks for @tablet', async ({
  page,
}) => {
  const { yard } = await drawLeg(page);
  const straight = await yard.saved();
  const knob = knobOf(straight);
  const pulled = { x: knob.x, y: knob.y + 96 };
  await dragGround(page, knob, pulled);

  const bowed = await yard.saved();
  const bow = legOf(bowed).bow;
  // a finger stands for some inches of ground, the middle ordinate for whole ones
  expect(bow).toBeGreaterThan(80);
  expect(Number.isInteger(bow)).toBe(true);
  expect(nearestOnTrack(pulled, legOf(bowed)).off).toBeLessThan(4);

  await yard.onCard(async () => {
    const radius = page.getByLabel('Radius', { exact: true });
    await radius.fill(`20'`);
    await radius.press('Enter');
    await expect(page.getByText(/expected half the chord, 30'-0", or more/)).toBeVisible();
    await radius.fill(`50'`);
    await radius.press('Enter');
    // 2 × 50 ft × asin(30/50) is 64.35 ft: 13 bays of 5 ft at most on a radius of 100 ft and under
    await expect(page.getByText(/^Bays: 13 at 4'-11 3\/8"$/)).toBeVisible();
  });
  const set = await yard.saved();
  expect(arcOf(legOf(set))?.radius).toBeCloseTo(600, 6);
  expect(legOf(set).bow).toBeGreaterThan(0);

  await page.getByRole('button', { name: 'Undo' }).click();
  expect(legOf(await yard.saved()).bow).toBe(bow);
  await page.getByRole('button', { name: 'Redo' }).click();
  await page.reload();
  expect((await yard.saved()).lines).toEqual(set.lines);
});

test('a leg is curved and made straight again on its card, without a hand on the pad @desk', async ({
  page,
}) => {
  const { yard } = await drawLeg(page);
  await yard.onCard(() =>
    page.getByLabel('Runs').selectOption({ label: 'Curved, bowed to the right' }),
  );
  expect(legOf(await yard.saved()).bow).toBeLessThan(0);
  await yard.onCard(async () => {
    const ordinate = page.getByLabel('Middle ordinate', { exact: true });
    await ordinate.fill(`10'`);
    await ordinate.press('Enter');
  });
  const curved = await yard.saved();
  expect(legOf(curved).bow).toBe(-120);
  // half of 60 ft and 10 ft: (30² + 10²) / 20 = 50 ft
  expect(arcOf(legOf(curved))?.radius).toBeCloseTo(600, 6);
  await yard.onCard(() => page.getByLabel('Runs').selectOption({ label: 'Straight' }));
  expect((await yard.saved()).lines['line:1']?.curved).toEqual({});
});
