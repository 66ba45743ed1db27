import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { filesIn, textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

const section = (page: Page) => page.getByRole('region', { name: 'Proposal' });

/** A price list of an invented company for all that is on the load list, changed by hand. */
const takePrices = async (page: Page, change: (text: string) => string): Promise<void> => {
  const file = await yardPage(page).download(() =>
    page.getByRole('button', { name: 'Download a list to fill in' }).click(),
  );
  const filled = readFileSync(file, 'utf8').replace(/,,,,/g, ',12.50,USD,,');
  await page.getByLabel('Price list').setInputFiles({
    name: 'our-prices.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(change(filled)),
  });
};

const pressDownload = (page: Page) =>
  section(page).getByRole('button', { name: 'Download proposal' }).click();

test('a proposal has the plan and the total, nothing of what that is made up of, and no file in it @tablet', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard#load');
  const proposal = section(page);
  await expect(proposal).toContainText('No total yet');
  await expect(proposal).toContainText('Missing: a price list.');
  const bare = await yard.download(() => pressDownload(page));
  const [open = []] = await textsOf(bare);
  expect(open.join(' ')).toContain('The price is still to be worked out.');
  expect(open.join(' ')).not.toMatch(/\d\.\d\d\b/);

  await takePrices(page, (text) => text.replace(/^hog-ring,.*\r\n/m, ''));
  await expect(proposal).toContainText('Missing: a price for hog-ring.');
  await takePrices(page, (text) =>
    text.replace('hours hole,hours each,0.5', 'hours hole,hours each,0.8'),
  );
  await expect(proposal).not.toContainText('Missing');
  const priced = page.getByRole('region', { name: /^Priced load list, USD/ });
  await expect(priced).toContainText('Dig, set and concrete a post: 0.8 hours each (price list)');
  await expect(priced).toContainText('3 hours per 100 ft (price list)');
  const total = (await priced.getByRole('row', { name: /^Total/ }).innerText())
    .trim()
    .split(/\s/)
    .at(-1);

  const file = await yard.download(() => pressDownload(page));
  const pages = await textsOf(file);
  expect(pages).toHaveLength(1);
  const words = (pages[0] ?? []).join(' ');
  expect(words).toContain('Sample yard: back yard');
  expect(words).toContain(`USD ${total}`);
  expect(words).toContain('Drive gate: double swing gate, 10 ft opening, two leaves');
  expect(words).toMatch(/Valid until.*Accepted, signature.*Date/);
  expect(words).not.toMatch(
    /\b(?:costs?|margin|labou?r|materials?|hours?|hole|footing|concrete)\b/i,
  );
  expect(words.match(/\d[\d,]*\.\d\d/g)).toHaveLength(3);
  expect(await filesIn(file)).toEqual([]);
  expect(readFileSync(file, 'latin1')).not.toMatch(/EmbeddedFile|lathline site/);
  await expect(proposal.getByRole('img', { name: /^Page Proposal, Letter/ })).toBeVisible();

  await proposal.getByLabel('Paper').selectOption('A4');
  await expect(proposal.getByRole('img', { name: /^Page Proposal, A4/ })).toBeVisible();
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
});

test('other ways to build it are on the page when each has its total @tablet', async ({ page }) => {
  const yard = yardPage(page);
  await page.goto('/?sample=corner-lot#load');
  const proposal = section(page);
  const printed = async (): Promise<string[]> =>
    (await textsOf(await yard.download(() => pressDownload(page)))).flat();
  // fabric of 6 ft is in the best way alone
  await takePrices(page, (text) => text.replace(/^fabric 72in.*\r\n/m, ''));
  await expect(proposal).toContainText('leaves out the other ways to build it');
  await expect(proposal).toContainText(/Missing: a price for fabric 72in\S* \(Best\)\./);
  const without = (await printed()).join(' ');
  expect(without).toMatch(/USD [\d,]+\.\d\d/);
  expect(without).not.toContain('As drawn here');

  await takePrices(page, (text) => text);
  await expect(proposal).not.toContainText('Missing');
  const ways = (await printed()).filter((text) => /^(?:As drawn here|Better|Best)$/.test(text));
  expect(ways).toEqual(['As drawn here', 'Better', 'Best']);
  const table = page.getByRole('region', { name: /^Side by side/ });
  const cells = await table
    .getByRole('row', { name: /^Total/ })
    .getByRole('cell')
    .allInnerTexts();
  const totals = cells.map((cell) => /[\d,]+\.\d\d/.exec(cell)?.[0] ?? cell);
  expect(totals).toHaveLength(3);
  expect((await printed()).filter((text) => totals.includes(text))).toEqual(totals);
});

test('with nothing drawn the key is shut and says why @tablet', async ({ page }) => {
  await page.goto('/index.html#load');
  const key = section(page).getByRole('button', { name: 'Download proposal' });
  await expect(key).toBeDisabled();
  await expect(key).toHaveAccessibleDescription(
    'Nothing to propose yet: no fence and no gate is drawn.',
  );
});

for (const [name, width, height] of [
  ['phone', 390, 844],
  ['tablet', 820, 1180],
] as const) {
  test(`on a ${name} the proposal fits the width and its keys are large enough @desk`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await page.goto('/?sample=back-yard#load');
    const key = section(page).getByRole('button', { name: 'Download proposal' });
    await key.scrollIntoViewIfNeeded();
    const box = await key.boundingBox();
    expect(box?.height ?? 0).toBeGreaterThanOrEqual(44);
    const picture = section(page).getByRole('img');
    await picture.scrollIntoViewIfNeeded();
    const drawn = await picture.boundingBox();
    expect((drawn?.x ?? -1) >= 0 && (drawn?.x ?? 0) + (drawn?.width ?? 9999) <= width).toBe(true);
  });
}
