import { readFileSync } from 'node:fs';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { noFindings, overflow } from './findings.ts';
import { yardPage } from './yardPage.ts';

/** Prices of an invented company, for some of what the yard takes. */
const prices = [
  'Item,Unit,Price,Currency',
  'tension-band 2.375,each,0.85,USD',
  'concrete,pack,6.10,USD',
  'hour,hour,60,USD',
].join('\n');

/** The section of other ways, by its written names. */
const waysOn = (page: Page) => {
  const section = page.getByRole('region', { name: 'Other ways to build it' });
  return {
    section,
    table: page.getByRole('region', { name: /^Side by side/ }),
    lists: page.getByRole('region', { name: 'Where the load lists differ' }),
    card: (name: string): Locator => section.getByRole('listitem', { name, exact: true }),
    add: async (name: string): Promise<void> => {
      await section.getByLabel('Name of one more way').fill(name);
      await section.getByRole('button', { name: 'Add it' }).click();
    },
    names: (): Promise<string[]> =>
      section
        .getByRole('listitem')
        .getByLabel('Called', { exact: true })
        .evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value)),
    undo: () => page.getByRole('button', { name: /^Undo/ }).click(),
  };
};

const cellsOf = async (row: Locator): Promise<string[]> => row.getByRole('cell').allInnerTexts();

test('other ways are named, built otherwise, moved and removed, and stand side by side @tablet', async ({
  page,
}) => {
  const yard = yardPage(page);
  const { section, table, lists, card, add, names, undo } = waysOn(page);
  await page.goto('/?sample=back-yard#load');
  await expect(section).toContainText('Give the customer a choice');
  await expect(table).toHaveCount(0);
  await noFindings(page);
  await add('  ');
  await expect(section.getByRole('alert')).toHaveText(
    'name: expected what to call this way to build it, found "  "',
  );
  await add('Invented better');
  await expect(section.getByRole('alert')).toHaveCount(0);
  await expect(card('Invented better')).toContainText('Built as the plan so far');
  await expect(lists).toHaveCount(0);
  await add('Invented best');
  expect(await names()).toEqual(['Invented better', 'Invented best']);

  // a build of the tables comes onto the site with the choice
  const better = card('Invented better');
  await better.getByLabel(/^In place of 5 ft/).selectOption('6 ft chain link');
  const fabric = lists.getByRole('row', { name: /^Fabric, 6'-0" high/ });
  await expect(fabric).toBeVisible();
  const [drawn = '', higher = '', same = ''] = await cellsOf(fabric);
  expect([drawn, same]).toEqual(['0"', '0"']);
  expect(higher).toMatch(/^[\d'" /-]+ \(\+[\d'" /-]+\)$/);

  // a copy of the plan’s build is named and changed where it is chosen
  const best = card('Invented best');
  await best
    .getByLabel(/^In place of 5 ft/)
    .selectOption('A copy of 5 ft, 1-5/8 line posts, to change');
  await best.getByText('Build', { exact: true }).click();
  await best.getByLabel('Name of the build').fill('Close bays');
  await best.getByLabel('Name of the build').press('Enter');
  await expect(best.getByLabel(/^In place of 5 ft/).locator('option:checked')).toHaveText(
    'Close bays',
  );
  await best.getByLabel('Longest bay').fill(`6'`);
  await best.getByLabel('Longest bay').press('Enter');
  const posts = table.getByRole('row', { name: /^Posts/ });
  await expect(posts).toContainText(/\(\+\d+\)/);
  const [asDrawn, , closer = ''] = await cellsOf(posts);
  expect(Number.parseInt(closer, 10)).toBeGreaterThan(Number(asDrawn));
  // the plan has its own build still
  await expect(page.getByRole('region', { name: 'Posts', exact: true })).toContainText('15');

  await better.getByLabel('Called', { exact: true }).fill('Invented high');
  await better.getByLabel('Called', { exact: true }).press('Enter');
  await section.getByRole('button', { name: 'Move up: Invented best' }).click();
  await expect.poll(names).toEqual(['Invented best', 'Invented high']);
  await expect(section.getByRole('button', { name: 'Move up: Invented best' })).toBeDisabled();
  await expect(table.getByRole('columnheader')).toHaveText([
    'What',
    'As drawn',
    'Invented best',
    'Invented high',
  ]);
  expect(await overflow(page)).toBeLessThanOrEqual(0);
  await noFindings(page);

  await section.getByRole('button', { name: 'Remove: Invented best' }).click();
  await expect.poll(names).toEqual(['Invented high']);
  await undo();
  await undo();
  await undo();
  await expect.poll(names).toEqual(['Invented better', 'Invented best']);

  const saved = await yard.saved();
  expect(
    Object.values(saved.alternatives)
      .map(({ label }) => label)
      .toSorted(),
  ).toEqual(['Invented best', 'Invented better']);
  const csv = readFileSync(
    await yard.download(() =>
      section.getByRole('button', { name: 'Download side by side' }).click(),
    ),
    'utf8',
  );
  expect(csv).toContain('Table,What,As drawn,Invented better,Invented best');

  // a build that a way names is not thrown away in the yard, and says why
  await yard.show('Yard');
  await yard.onCard(async () => {
    await page.getByText(/^Not used in this yard: 2/).click();
    await expect(
      page.getByText('Kept for “Invented better”, another way to build it.'),
    ).toBeVisible();
    await expect(page.getByRole('button', { name: 'Remove 6 ft chain link' })).toHaveCount(0);
  });
});

test('by a price list every way says what it comes to, and what is not in that @desk-phone', async ({
  page,
}) => {
  const { section, table } = waysOn(page);
  await page.goto('/?sample=corner-lot#load');
  await expect(table.getByRole('columnheader')).toHaveText(['What', 'As drawn', 'Better', 'Best']);
  await expect(section).toContainText('What each comes to is told by a price list');
  await page.getByLabel('Price list').setInputFiles({
    name: 'our-prices.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from(prices),
  });
  const total = table.getByRole('row', { name: /^Total/ });
  await expect(total.getByRole('cell').first()).toHaveText(/^[\d,]+\.\d\d without \d+ items$/);
  await expect(total.getByRole('cell').last()).toHaveText(
    /^[\d,]+\.\d\d without \d+ items \(\+[\d,]+\.\d\d as far as priced\)$/,
  );
  await expect(table.getByRole('row', { name: /^Tax/ })).toContainText('none in the list');
  await section.getByText('What has no price in them').click();
  await expect(section.getByText(/^Best: no price for .*fabric 72in/)).toBeVisible();
  expect(await overflow(page)).toBeLessThanOrEqual(0);
  for (const theme of ['day', 'dark', 'sun']) {
    await page.evaluate((name) => {
      document.documentElement.dataset['theme'] = name;
    }, theme);
    await noFindings(page);
  }
});

test('a way that is taken is the plan, and what was the plan is kept in its place @tablet', async ({
  page,
}) => {
  const yard = yardPage(page);
  const { section, table, card, names, undo } = waysOn(page);
  await page.goto('/?sample=corner-lot#load');
  const fabric = page.getByRole('region', { name: 'Between the posts' });
  await expect(fabric).toContainText(`4'-0" high`);
  await section.getByRole('button', { name: 'Take as the plan: Best' }).click();
  await expect(page.getByText('what it was is kept as “Instead of Best”')).toBeVisible();
  await expect(fabric).toContainText(`6'-0" high`);
  await expect.poll(names).toEqual(['Better', 'Instead of Best']);
  const was = card('Instead of Best').getByLabel('In place of 6 ft chain link');
  await expect(was).toHaveValue('spec:four-foot');
  // the other way gives what it gave
  await expect(card('Better').getByLabel('In place of 6 ft chain link')).toHaveValue(
    'spec:four-foot-heavy',
  );
  await expect(table.getByRole('row', { name: /^Posts/ })).toBeVisible();
  const taken = await yard.saved();
  await undo();
  await expect(fabric).toContainText(`4'-0" high`);
  await expect.poll(names).toEqual(['Better', 'Best']);
  await page.getByRole('button', { name: /^Redo/ }).click();
  await section.getByRole('button', { name: 'Take as the plan: Instead of Best' }).click();
  await expect(fabric).toContainText(`4'-0" high`);
  await expect.poll(names).toEqual(['Better', 'Best']);
  expect(Object.keys((await yard.saved()).specs)).toEqual(Object.keys(taken.specs));
});
