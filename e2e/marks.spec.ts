import { expect, test } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

test('marks are set on open ground, named, drawn onto, kept when the fence goes, and erased @phone', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await yard.take('Mark');
  await yard.pressAt(120, 300);
  await expect(page.getByRole('heading', { name: 'Mark: M1' })).toBeVisible();
  await yard.pressAt(250, 300);
  await expect(page.getByRole('heading', { name: 'Mark: M2' })).toBeVisible();
  // a tap on one that is there selects it
  await yard.pressAt(121, 302);
  await expect(page.getByRole('heading', { name: 'Mark: M1' })).toBeVisible();
  await yard.onCard(async () => {
    await page.getByLabel('Name').fill('NE pin');
    await page.getByLabel('Name').press('Enter');
  });
  let site = await yard.saved();
  expect(Object.values(site.marks).map(({ label }) => label)).toEqual(['NE pin', 'M2']);

  await yard.take('Fence');
  const [pin, stake] = Object.values(site.marks);
  await yard.pressGround(pin?.x ?? 0, pin?.y ?? 0);
  await yard.pressGround(stake?.x ?? 0, stake?.y ?? 0);
  await yard.finish();
  site = await yard.saved();
  const [line] = Object.values(site.lines);
  expect(Object.values(line?.path ?? {}).map(({ mark }) => mark)).toEqual(Object.keys(site.marks));
  // the line that was finished is selected
  await yard.take('Select');
  await page.keyboard.press('Delete');
  site = await yard.saved();
  expect([Object.keys(site.lines).length, Object.keys(site.marks).length]).toEqual([0, 2]);

  // the crew sheet says where the pin is
  await yard.show('Crew sheet');
  const path = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  const texts = (await textsOf(path)).flat();
  expect(texts).toContain('NE pin');
  expect(texts).toContain('mark on the ground');
  await yard.show('Yard');

  await yard.pressGround(stake?.x ?? 0, stake?.y ?? 0);
  await expect(page.getByRole('heading', { name: 'Mark: M2' })).toBeVisible();
  await page.keyboard.press('Delete');
  expect(Object.values((await yard.saved()).marks).map(({ label }) => label)).toEqual(['NE pin']);
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(Object.keys((await yard.saved()).marks)).toHaveLength(2);
});

test('a mark is set, nudged and joined with keys alone @desk', async ({ page }) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await yard.pad.focus();
  await page.keyboard.press('x');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Space');
  await expect(page.getByRole('heading', { name: 'Mark: M1' })).toBeVisible();
  await page.keyboard.press('s');
  const [before] = Object.values((await yard.saved()).marks);
  await yard.pad.focus();
  await page.keyboard.press('ArrowUp');
  const [after] = Object.values((await yard.saved()).marks);
  expect((after?.y ?? 0) - (before?.y ?? 0)).toBeCloseTo(1, 6);

  await yard.pad.focus();
  await page.keyboard.press('x');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Space');
  await expect(page.getByRole('heading', { name: 'Mark: M2' })).toBeVisible();
  await yard.onCard(() =>
    page.getByRole('button', { name: /^Join to the nearest mark/ }).press('Enter'),
  );
  expect(Object.values((await yard.saved()).marks).map(({ label }) => label)).toEqual(['M1']);
});
