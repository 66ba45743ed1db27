import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

test('a length that lies in the yard is cut first, less is bought for it, and it is printed and undone', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard#load');
  const rails = page.getByRole('region', { name: /^Rail, 1-3\/8/ });
  await expect(rails).toBeVisible();
  const before = await rails.getByRole('row').count();
  const own = page.getByRole('region', { name: 'Left over in the yard' });
  await expect(own).toContainText('Nothing is said to lie in the yard');
  const form = own.getByRole('form', { name: 'One more length' });
  const sort = form.getByLabel('Left over of');
  const rail = await sort.locator('option', { hasText: /^Rail, 1-3\/8/ }).getAttribute('value');
  await sort.selectOption(rail);
  await form.getByLabel('Length').fill('long');
  await form.getByRole('button', { name: 'Add it' }).click();
  await expect(form.getByRole('alert')).toContainText('“long”');
  await form.getByLabel('Length').fill(`20'`);
  await form.getByLabel('How many').fill('2');
  await form.getByRole('button', { name: 'Add it' }).click();
  await expect(own.getByRole('listitem')).toHaveCount(1);
  await expect(rails).toContainText('the yard');
  await expect(page.getByRole('region', { name: 'Rails' })).toContainText('from the yard');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations).toEqual([]);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wide).toBeLessThanOrEqual(0);

  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  expect((await textsOf(file)).flat().join(' ')).toContain('from the yard');

  await yard.show('Load list');
  await own.getByRole('button', { name: /^Remove: 2 of 20/ }).click();
  await expect(own.getByRole('listitem')).toHaveCount(0);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(own.getByRole('listitem')).toHaveCount(1);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(own.getByRole('listitem')).toHaveCount(0);
  await expect(rails.getByRole('row')).toHaveCount(before);
});

test('how a company counts is kept for new sites, and left where it is for the drawing before them', async ({
  page,
}) => {
  await page.goto('/?sample=back-yard#load');
  await page.getByText('How this company counts').click();
  const every = page.getByLabel('Ties along rails, no farther apart than');
  await every.fill('18');
  await every.press('Enter');
  await page.getByRole('button', { name: 'Keep these for new sites' }).click();
  await expect(page.getByText('New sites begin with what this site counts.')).toBeVisible();
  await page.getByRole('button', { name: 'Back to what the trade counts' }).click();
  await expect(every).toHaveValue(`2'-0"`);
  await expect(page.getByText('New sites begin with other numbers')).toBeVisible();
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'New yard' }).click();
  await page.goto('/#load');
  await page.getByText('How this company counts').click();
  await expect(every).toHaveValue(`1'-6"`);
  await page.getByRole('button', { name: 'Forget what is kept' }).click();
  await expect(page.getByText('New sites begin with what the trade counts.')).toBeVisible();
});
