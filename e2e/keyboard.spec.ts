import { expect, test } from '@playwright/test';
import { layOutSite } from '../src/engine/layOutSite.ts';
import { yardPage } from './yardPage.ts';

test('the keyboard alone draws a fence, drops a gate, moves it and takes it all back', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Draw a fence' }).focus();
  await page.keyboard.press('Enter');
  await yard.pad.focus();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Space');
  for (const [length, arrow] of [
    ['40ft', 'ArrowRight'],
    ['30ft', 'ArrowDown'],
  ] as const) {
    await page.keyboard.press(`Shift+${arrow}`);
    await page.keyboard.type(length);
    await page.keyboard.press('Enter');
    await yard.pad.focus();
  }
  await page.keyboard.press('Enter');

  await yard.pad.focus();
  await page.keyboard.press('0');
  await page.keyboard.press('g');
  const astray = page.getByText('Point at the leg that the gate goes into');
  await expect(astray).toBeVisible();
  for (let press = 0; press < 40 && (await astray.isVisible()); press += 1) {
    await page.keyboard.press('ArrowUp');
  }
  await page.keyboard.press('Enter');
  const gated = await yard.saved();
  const legs = Object.values(layOutSite(gated).lines).flatMap((line) => line.legs);
  expect(legs.map(({ length }) => Math.round(length * 64) / 64)).toEqual([480, 360]);
  expect(Object.keys(gated.gates)).toHaveLength(1);
  expect(Object.values(layOutSite(gated).gates)[0]?.placed).toBe(true);

  await yard.pad.focus();
  while (await page.getByRole('button', { name: /^Undo/ }).isEnabled()) {
    await page.keyboard.press('Control+z');
  }
  const first = await yard.saved();
  expect(first.lines).toEqual({});
  expect(first.gates).toEqual({});
  expect(first.marks).toEqual({});
});
