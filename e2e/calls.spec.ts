import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { yardPage } from './yardPage.ts';

/** Ours, of no place: a square of 100 ft but for 0.02 ft, with a line that is no call. */
const deed = `BEGINNING at an iron pin on Alder Street; thence due north 100.00 feet to a stake;
thence due east 100.00 feet; the next line is smudged and can not be made out
thence due south 100.00 feet to a nail;
thence due west 100.02 feet to the POINT OF BEGINNING.`;

const sheet = (page: Page) => page.getByRole('dialog', { name: 'Lot from a deed or plat' });

const paste = (page: Page, text: string): Promise<void> =>
  sheet(page).getByLabel('Calls, a line for each, or a deed description').fill(text);

test('a deed is pasted, the line that is not understood is shown, the lot is drawn and undone @desk', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Lot from a deed or plat' }).first().click();
  await expect(sheet(page)).toContainText('this is no boundary survey');
  await expect(sheet(page).getByRole('region', { name: 'What can be pasted' })).toBeVisible();
  await paste(page, deed);
  await expect(sheet(page).getByRole('status')).toHaveText('4 sides of the lot; 1 not understood.');
  const unread = sheet(page).getByRole('region', { name: 'Not understood' });
  await expect(unread.getByRole('listitem')).toHaveCount(1);
  await expect(unread).toContainText('Line 2');
  await expect(unread).toContainText('the next line is smudged and can not be made out');
  // 0.02 ft of 400.02 ft
  await expect(sheet(page)).toContainText('precision 1:20,001.');
  await expect(sheet(page)).toContainText('10,001 sq ft, 0.230 acres');
  await expect(sheet(page).getByRole('region', { name: 'Courses', exact: true })).toContainText(
    `100.02'`,
  );
  await sheet(page).getByRole('button', { name: 'Draw the lot' }).click();
  await expect(sheet(page)).toBeHidden();
  const site = await yard.saved();
  expect(Object.values(site.marks).map(({ label, fixed }) => [label, fixed])).toEqual([
    ['iron pin on Alder Street', true],
    ['stake', true],
    ['', true],
    ['nail', true],
  ]);
  const [lot] = Object.values(site.features);
  expect(lot).toMatchObject({ kind: 'boundary', label: 'Lot', closed: true });
  await page.getByRole('button', { name: /^Undo/ }).click();
  const undone = await yard.saved();
  expect([Object.keys(undone.features), Object.keys(undone.marks)]).toEqual([[], []]);
});

test('Escape closes the sheet when the key that had the focus is gone @desk', async ({ page }) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Lot from a deed or plat' }).first().click();
  await sheet(page).getByRole('button', { name: 'Put in an example' }).click();
  await expect(sheet(page)).toContainText('5 sides of the lot');
  await page.keyboard.press('Escape');
  await expect(sheet(page)).toBeHidden();
});

test('a figure that cannot be is told in one line, and the text is still there when one comes back @desk', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  const open = page.getByRole('button', { name: 'Lot from a deed or plat' }).first();
  await open.click();
  await paste(page, 'N 26 E 100\nN 126 E 50\nS 26 W 100');
  await expect(sheet(page)).toContainText('“126” in a bearing is over 90°');
  await expect(sheet(page)).toContainText('1 call was not understood (line 2)');
  await sheet(page).getByText('Bare distances in feet, to close to 1 in 5,000').click();
  await sheet(page).getByLabel('Has to close to 1 in').fill('well');
  await sheet(page).getByLabel('Has to close to 1 in').press('Enter');
  await expect(sheet(page).getByText(/“well” is not a precision/)).toBeVisible();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await expect(sheet(page)).toBeHidden();
  await open.click();
  await expect(sheet(page).getByLabel('Calls, a line for each, or a deed description')).toHaveValue(
    /N 126 E 50/,
  );
  await sheet(page).getByRole('button', { name: 'Clear the calls' }).click();
  await sheet(page).getByRole('button', { name: 'Put in an example' }).click();
  await expect(sheet(page).getByRole('status')).toContainText('5 sides of the lot');
});

test('axe finds nothing in the sheet, empty or filled, in any light @desk-phone', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Lot from a deed or plat' }).first().click();
  const check = async (state: string): Promise<void> => {
    for (const theme of ['day', 'dark', 'sun']) {
      await page.evaluate((light) => (document.documentElement.dataset['theme'] = light), theme);
      const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
      const found = violations.map(({ id, nodes }) => [state, theme, id, nodes[0]?.html]);
      expect(found).toEqual([]);
    }
  };
  await check('empty');
  // a stop, cautions, a curve, a tie and lines that are not understood
  await paste(
    page,
    `COMMENCING at a stone; thence due south 5 feet to the POINT OF BEGINNING; ${deed}; thence N 5`,
  );
  await expect(sheet(page).getByRole('status')).toContainText('not understood');
  for (const summary of ['How they were balanced', 'Every line as it was read']) {
    const more = sheet(page).getByText(summary);
    if (await more.isVisible()) await more.click();
  }
  await check('filled');
  const keys = await sheet(page).getByRole('button').all();
  const heights = await Promise.all(keys.map(async (key) => (await key.boundingBox())?.height));
  expect(heights.filter((height) => height !== undefined && height < 44)).toEqual([]);
});
