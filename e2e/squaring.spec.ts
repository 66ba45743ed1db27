import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { yardPage } from './yardPage.ts';

test('a corner is squared by 3-4-5, four corners by their diagonals, with the legs that are drawn', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await yard.take('Fence');
  await yard.pressAt(150, 300);
  await yard.piece('21', 'East, to the right');
  await yard.piece('16', 'North, up');
  await yard.finish();
  await yard.take('Select');
  const [, corner] = Object.values((await yard.saved()).marks);
  await yard.pressGround(corner?.x ?? 0, corner?.y ?? 0);
  const pull = page.getByRole('button', { name: /^Pull up/ });
  if (await pull.isVisible()) await pull.click();
  await page.getByRole('button', { name: 'Square a corner' }).click();
  const sheet = page.getByRole('dialog', { name: 'Square a corner' });
  // 21 by 16 ft has room for five times 3-4-5
  await expect(sheet.getByRole('button', { name: `15'-0" · 20'-0" · 25'-0"` })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await expect(sheet.getByRole('img')).toHaveAccessibleName(
    `Square corner at A: A to B 20'-0", A to C 15'-0", B to C 25'-0"`,
  );
  await sheet.getByLabel('Room the other').fill('two');
  await sheet.getByLabel('Room the other').press('Enter');
  await expect(sheet.getByRole('alert')).toContainText('Room the other');
  await sheet.getByLabel('Room the other').fill('2');
  await sheet.getByLabel('Room the other').press('Enter');
  await expect(sheet.getByRole('status')).toContainText(`3-4-5 needs legs of 3'-0" and 4'-0"`);
  await sheet.getByLabel('Room the other').fill('12');
  await sheet.getByLabel('Room the other').press('Enter');
  await sheet.getByRole('button', { name: `9'-0" · 12'-0" · 15'-0"` }).click();
  const check = sheet.getByLabel('To check, what the tape reads from B to C');
  await check.fill(`14'-11 1/2"`);
  await check.press('Enter');
  // (180² - 179.5²) / (2 × 144) is 0.624 in
  await expect(sheet.getByRole('status')).toContainText(
    `Out of square by 5/8": swing C 5/8" away from B`,
  );

  await sheet.getByRole('button', { name: 'Four corners: diagonals' }).click();
  await sheet.getByLabel('A to B', { exact: true }).fill('100');
  await sheet.getByLabel('A to D', { exact: true }).fill('60');
  await sheet.getByLabel('A to C reads').fill(`116'-7 1/2"`);
  await sheet.getByLabel('B to D reads').fill(`116'-7 1/2"`);
  await sheet.getByLabel('B to D reads').press('Enter');
  await expect(sheet).toContainText(`Both diagonals have to read116'-7 3/8"`);
  await expect(sheet.getByRole('status')).toContainText('Square: both diagonals are equal.');
  await sheet.getByLabel('B to D reads').fill(`116'-3"`);
  await sheet.getByLabel('B to D reads').press('Enter');
  await expect(sheet.getByRole('status')).toContainText('the way from C to D');
  await expect(sheet).toContainText('Measure both diagonals before you dig.');
  const { violations } = await new AxeBuilder({ page }).include('dialog').analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  await sheet.getByRole('button', { name: 'Done' }).click();
  await expect(sheet).toBeHidden();
});
