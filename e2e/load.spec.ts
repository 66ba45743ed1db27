import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

test('the load list counts as the company does, is cut from sticks, lights up in the yard, and is printed', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=sports-court#load');
  const fittings = page.getByRole('region', { name: 'Fittings' });
  const ties = fittings.getByRole('row', { name: /^Tie at rails/ });
  await expect(ties).toContainText('173');
  await page.getByText('How this company counts').click();
  const every = page.getByLabel('Ties along rails, no farther apart than');
  await every.fill('soon');
  await every.press('Enter');
  await expect(page.getByRole('alert')).toContainText('“soon”');
  await every.fill('18');
  await every.press('Enter');
  // 343 ft 4 in of rail in pieces, each rounded up
  await expect(ties).not.toContainText('173');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(ties).toContainText('173');

  // an item that the company never takes leaves the list
  await page.getByText('What every rule takes').click();
  const hog = page.getByRole('listitem').filter({ hasText: 'Hog ring' });
  await hog.getByLabel('Takes, usually 1').fill('0');
  await hog.getByLabel('Takes, usually 1').press('Enter');
  await expect(fittings.getByRole('row', { name: /^Hog ring/ })).toHaveCount(0);

  const rails = page.getByRole('region', { name: /^Rail, 1-5\/8 high strength/ });
  await expect(rails).toContainText(/stick/);
  await expect(rails.getByRole('row')).not.toHaveCount(0);

  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download CSV' }).click(),
  );
  const csv = readFileSync(file, 'utf8');
  expect(csv).toContain('Needed,Each,Bought as');
  expect(csv).not.toContain('Hog ring');

  await fittings.getByRole('button', { name: /^Show Loop cap/ }).click();
  const lit = page.getByRole('status').filter({ hasText: 'Lit: Loop cap' });
  await expect(lit).toContainText('at 31 places');
  await lit.getByRole('button', { name: 'Put out' }).click();
  await expect(lit).toHaveCount(0);

  await yard.show('Crew sheet');
  const pdf = await yard.download(() => page.getByRole('button', { name: 'Download PDF' }).click());
  const words = (await textsOf(pdf)).flat().join(' ');
  expect(words).toContain('Tension band');
  expect(words).toMatch(/proven the fewest|at least are needed/);
});

test('a price list is taken as far as it can be read, what has no price is named, and it stays on the device @desk', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard#load');
  const template = await yard.download(() =>
    page.getByRole('button', { name: 'Download a list to fill in' }).click(),
  );
  const rows = readFileSync(template, 'utf8').split(/\r?\n/);
  expect(rows[0]).toBe('Item,Unit,Price,Currency,Number,What');
  const filled = rows
    .filter((row) => row !== '')
    .map((row, n) => (n === 0 ? row : row.replace(/,,,,/, ',2.50,USD,,')))
    .map((row) => row.replace(/^hog-ring,pack,2\.50/, 'hog-ring,pack,"2,50"'))
    .filter((row) => !row.startsWith('tension-wire'));
  const files = page.getByLabel('Price list');
  await files.setInputFiles({
    name: 'no-list.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('a,b\n1,2'),
  });
  await expect(page.getByRole('alert')).toContainText('expected a header with the columns Item');
  await files.setInputFiles({
    name: 'our-prices.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(filled.join('\n')),
  });
  await expect(page.getByText(/expected a point before the decimals/)).toBeVisible();
  await expect(page.getByText(/^No price for .*tension-wire/)).toBeVisible();
  const priced = page.getByRole('region', { name: /^Priced load list, USD/ });
  const total = priced.getByRole('row', { name: /^Total/ });
  await expect(total).toContainText(/\d\.\d\d/);
  const before = await total.textContent();
  await page.getByLabel('Old fence to take out').fill("100'");
  await page.getByLabel('Old fence to take out').press('Enter');
  await expect(total).not.toHaveText(before ?? '');
  await page.reload();
  await expect(total).toBeVisible();
  // no price goes into the file
  await yard.show('Yard');
  expect(JSON.stringify(await yard.saved())).not.toContain('our-prices');
  await yard.show('Load list');
  await page.getByRole('button', { name: 'Forget our-prices.csv' }).click();
  await expect(priced).toHaveCount(0);
});
