import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { readCsv } from '../src/importers/csv/readCsv.ts';
import { yardPage } from './yardPage.ts';

/** The hardware book on the screen, by its written names. */
const bookOn = (page: Page) => {
  const sheet = page.getByRole('dialog', { name: 'Hardware book' });
  const entry = (name: string) =>
    sheet.getByRole('listitem').filter({ has: page.getByText(name, { exact: true }) });
  return {
    sheet,
    entry,
    open: () => page.getByRole('button', { name: 'Hardware book' }).click(),
    close: () => sheet.getByRole('button', { name: 'Done' }).click(),
    edit: (name: string) =>
      sheet.getByRole('button', { name: `Edit ${name}`, exact: true }).click(),
    enter: async (label: string, text: string): Promise<void> => {
      const field = sheet.getByLabel(label, { exact: true });
      await field.fill(text);
      await field.press('Enter');
    },
  };
};

const openings = '/?sample=back-yard#openings';

test('the book takes good values, answers bad ones at their field, and outlasts site and page', async ({
  page,
}) => {
  const book = bookOn(page);
  const bulldog = book.entry('Bulldog hinge');
  await page.goto(openings);
  await book.open();
  await book.edit('Bulldog hinge');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  const bad: readonly (readonly [label: string, text: string, says: string])[] = [
    ['Takes at least', '3', 'Takes at least 3" is more than plan with 2 1/2"'],
    ['Takes at least', '-1', 'Takes at least: expected more than 0, found -1"'],
    ['Takes at most', '0', 'Takes at most: expected more than 0, found 0"'],
    ['Plan with', 'wide', 'Plan with: “wide”'],
    ['Readings', '1 3/4, 0', 'Readings: expected more than 0, found 0"'],
    ['Fits posts from', '-2', 'Fits posts from: expected more than 0'],
  ];
  for (const [label, text, says] of bad) {
    await book.enter(label, text);
    await expect(book.sheet.getByRole('alert')).toContainText(says);
    await expect(bulldog).toContainText('Takes up 2" to 2 1/2", planned 2 1/2", assumed');
    await book.sheet.getByLabel(label, { exact: true }).press('Escape');
    await expect(book.sheet.getByRole('alert')).toHaveCount(0);
  }
  await book.enter('Fits posts from', '2 3/8');
  await book.enter('Posts to', '2');
  await expect(book.sheet.getByRole('alert')).toContainText(
    'Fits posts from 2 3/8" is more than posts to 2"',
  );
  await book.sheet.getByLabel('Posts to', { exact: true }).press('Escape');
  await book.enter('Readings', '1 7/8, 1 3/4, 2');
  await expect(bulldog).toContainText('Takes up 1 3/4" to 2", planned 2", measured');
  await book.close();

  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'New yard' }).click();
  await book.open();
  await expect(bulldog).toContainText('Takes up 1 3/4" to 2", planned 2", measured');
  await page.reload();
  await book.open();
  await expect(bulldog).toContainText('Takes up 1 3/4" to 2", planned 2", measured');
});

test('a part is added, copied, found and deleted, and each is undone in the book alone', async ({
  page,
}) => {
  const book = bookOn(page);
  await page.goto(openings);
  await book.open();
  const undo = book.sheet.getByRole('button', { name: /^Undo/ });
  await book.sheet.getByRole('button', { name: 'Add closer' }).click();
  await book.enter('Name', 'Our closer');
  await book.sheet.getByRole('button', { name: 'Copy' }).click();
  await expect(book.entry('Our closer, copy')).toBeVisible();
  await book.sheet.getByRole('button', { name: 'Delete from the book' }).click();
  await expect(book.entry('Our closer, copy')).toHaveCount(0);
  await book.sheet.getByLabel('Search').fill('closer our');
  await expect(book.sheet.getByRole('listitem')).toHaveCount(1);
  await undo.click();
  await expect(book.sheet.getByRole('listitem')).toHaveCount(2);
  for (let n = 0; n < 3; n += 1) await undo.click();
  await expect(book.sheet.getByRole('listitem')).toHaveCount(0);
  await expect(undo).toBeDisabled();
  await book.close();
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});

test('a file shows what it would do before it does it, and comes back as it went', async ({
  page,
}) => {
  const yard = yardPage(page);
  const book = bookOn(page);
  await page.goto(openings);
  await book.open();
  const chooser = page.getByLabel('CSV file to import');
  const give = (name: string, text: string) =>
    chooser.setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
  const exported = async () =>
    readFileSync(
      await yard.download(() => book.sheet.getByRole('button', { name: 'Export CSV' }).click()),
      'utf8',
    );
  const before = await exported();
  await give('torn.csv', 'Kind,Name\nhinge,"torn');
  await expect(book.sheet.getByRole('alert')).toContainText(
    'torn.csv: line 2: a quotation mark is not closed',
  );
  expect(await exported()).toBe(before);

  await give(
    'list.csv',
    'Kind,Name,Low,Planned,High\nhinge,Ours,1 3/4,2,2\nhinge,Bulldog hinge,2,2,2 1/4\nlatch,Bad,3,2,1\n',
  );
  const preview = book.sheet.getByRole('group', { name: 'What list.csv would do' });
  await expect(preview).toContainText('line 2: Ours: Takes up 1 3/4" to 2"');
  await expect(preview).toContainText(
    'line 3: Bulldog hinge: planned 2 1/2" to 2", high 2 1/2" to 2 1/4"',
  );
  await expect(preview).toContainText('line 4: Low 3" is more than planned 2"');
  await expect(book.entry('Ours')).toHaveCount(0);
  await preview.getByRole('button', { name: 'Take 2 into the book' }).click();
  await expect(book.entry('Ours')).toContainText('Takes up 1 3/4" to 2"');

  const taken = await exported();
  const rows = readCsv(taken);
  expect(rows.ok && rows.value.length).toBe(before.trim().split('\r\n').length + 1);
  await give('same.csv', taken);
  await expect(book.sheet.getByRole('button', { name: 'Nothing to take' })).toBeDisabled();
  await book.sheet.getByRole('button', { name: /^Undo/ }).click();
  expect(await exported()).toBe(before);
});

/** Everything that the device holds of the book, as one text. */
const onDevice = (tab: Page): Promise<string> =>
  tab.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const asked = indexedDB.open('lathline-book');
        asked.addEventListener('error', () => reject(new Error('no book on the device')));
        asked.addEventListener('success', () => {
          const all = asked.result.transaction('parts').objectStore('parts').getAll();
          all.addEventListener('success', () => {
            asked.result.close();
            resolve(JSON.stringify(all.result));
          });
        });
      }),
  );

test('two tabs keep each other’s entries', async ({ page, context }) => {
  const other = await context.newPage();
  await page.goto(openings);
  await other.goto(openings);
  for (const [tab, name] of [
    [page, 'Hinge of one'],
    [other, 'Hinge of the other'],
  ] as const) {
    const book = bookOn(tab);
    await book.open();
    await book.sheet.getByRole('button', { name: 'Add hinge' }).click();
    await book.enter('Name', name);
    await expect(book.entry(name)).toBeVisible();
    // a page that is closed in the very moment of writing writes nothing
    await expect.poll(() => onDevice(tab)).toContain(name);
  }
  await other.reload();
  const book = bookOn(other);
  await book.open();
  await expect(book.entry('Hinge of one')).toBeVisible();
  await expect(book.entry('Hinge of the other')).toBeVisible();
});

test('the gate’s card takes parts of the book, and refuses what cannot be', async ({ page }) => {
  const yard = yardPage(page);
  const book = bookOn(page);
  await page.goto(openings);
  await book.open();
  await book.edit('Bulldog hinge');
  await book.enter('Fits posts from', '1 5/8');
  await book.close();
  await page
    .getByRole('article', { name: 'Drive gate' })
    .getByRole('button', { name: 'Show in the yard' })
    .click();
  const before = await yard.saved();

  await yard.onCard(async () => {
    const leaf = page.getByRole('group', { name: 'Leaf 1', exact: true });
    const hinges = leaf.getByLabel('Hinges', { exact: true });
    const hung = await hinges.inputValue();
    await leaf.getByText('Hinges: sizes and fit').click();
    await leaf.getByRole('button', { name: 'From the book' }).click();
    await book.sheet.getByRole('button', { name: 'Take Bulldog hinge' }).click();
    await expect(leaf.getByRole('alert')).toContainText(
      'Hinge “Bulldog hinge” fits posts of 1.625" OD: the post of leaf 1 is',
    );
    await expect(hinges).toHaveValue(hung);

    const width = leaf.getByLabel('Width at the top, out to out');
    const good = await width.inputValue();
    await width.fill('-4');
    await width.press('Enter');
    await expect(leaf.getByText('expected more than 0, found -4"')).toBeVisible();
    await width.press('Escape');
    await expect(width).toHaveValue(good);

    const latch = page.getByText('Drop rod or latch: sizes and fit');
    await latch.click();
    const reach = page.getByLabel('Catches to', { exact: true });
    await reach.fill('1');
    await reach.press('Enter');
    await expect(page.getByRole('alert').last()).toContainText('is more than catches to 1"');
    await reach.press('Escape');
  });
  expect(await yard.saved()).toEqual(before);

  await yard.onCard(async () => {
    const leaf = page.getByRole('group', { name: 'Leaf 1', exact: true });
    await leaf.getByText('Leaf 1: other widths, height, frame').click();
    const bottom = leaf.getByLabel('Width at the bottom');
    await bottom.fill('57 1/4"');
    await bottom.press('Enter');
    await expect(leaf.getByText(/at the bottom governs: the largest has to go in/)).toBeVisible();
    await page.getByText('How it closes').click();
    await page.getByLabel('Closes', { exact: true }).selectOption('Rolls aside, cantilever');
    await page.getByLabel('Roller posts, centre to centre').fill('0');
    await page.getByLabel('Roller posts, centre to centre').press('Enter');
    await expect(
      page.getByText('Roller posts, centre to centre: expected more than 0'),
    ).toBeVisible();
    await page.getByLabel('Roller posts, centre to centre').press('Escape');
  });
  const rolled = (await yard.saved()).gates['gate:drive'];
  expect(rolled?.way.kind).toBe('cantilever');
  expect(Object.values(rolled?.leaves ?? {}).map(({ hinge }) => hinge)).toEqual([null, null]);
});

test('a site keeps its figures of a part until it is told to take the book’s', async ({ page }) => {
  const yard = yardPage(page);
  await page.goto(openings);
  await page
    .getByRole('article', { name: 'Drive gate' })
    .getByRole('button', { name: 'Show in the yard' })
    .click();
  const before = (await yard.saved()).hardware;
  const leaf = page.getByRole('group', { name: 'Leaf 1', exact: true });
  await yard.onCard(async () => {
    await leaf.getByText('Hinges: sizes and fit').click();
    await leaf.getByRole('button', { name: 'Put in the book' }).click();
    await expect(leaf.getByText('As the hardware book has it.')).toBeVisible();
    const readings = leaf.getByLabel('Readings', { exact: true });
    await readings.fill('2, 2 1/8');
    await readings.press('Enter');
    await expect(leaf.getByText(/^The hardware book has it otherwise: .+ planned/)).toBeVisible();
  });
  const measured = (await yard.saved()).hardware;
  expect(Object.values(measured).map(({ takes }) => takes.planned)).toContain(2.125);
  await yard.onCard(async () => {
    await leaf.getByRole('button', { name: 'Take the book’s figures' }).click();
    await expect(leaf.getByText('As the hardware book has it.')).toBeVisible();
  });
  const taken = (await yard.saved()).hardware;
  expect(Object.values(taken).map(({ takes }) => takes)).toEqual(
    Object.values(before).map(({ takes }) => takes),
  );
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect((await yard.saved()).hardware).toEqual(measured);
});
