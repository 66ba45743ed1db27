import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

/** The book of town rules and the rules of the yard, by their written names. */
const rulesOn = (page: Page) => {
  const sheet = page.getByRole('dialog', { name: 'Book of town rules' });
  const card = page.getByRole('region', { name: 'Rules of the town' });
  const pull = page.getByRole('button', { name: /^Pull up/ });
  return {
    sheet,
    card,
    /** Brings the card up where it is folded, and unfolds the rules. */
    onCard: async () => {
      await expect(
        page.getByRole('button', { name: /^(?:Pull up|Put down|Show all)/ }).first(),
      ).toBeVisible();
      if (await pull.isVisible()) await pull.click();
      const open = card.getByRole('button', { name: 'Book of town rules' });
      if (!(await open.isVisible()))
        await card.getByText('Rules of the town', { exact: true }).click();
      return open;
    },
    close: () => sheet.getByRole('button', { name: 'Done' }).click(),
    /** Fills in the open form of the book or the card. */
    fill: async (within: typeof sheet, fields: Readonly<Record<string, string>>) => {
      for (const [label, text] of Object.entries(fields))
        await within.getByLabel(label, { exact: true }).fill(text);
    },
  };
};

test('a rule of the book is taken over, flagged at its place, accepted and printed', async ({
  page,
}) => {
  const yard = yardPage(page);
  const { sheet, card, onCard, close, fill } = rulesOn(page);
  await page.goto('/?sample=back-yard');
  await (await onCard()).click();
  await expect(sheet).toContainText('No rules yet.');
  await sheet.getByRole('button', { name: 'Add a rule' }).click();
  await fill(sheet, { Town: 'Inventedville', 'Where the town says so': 'Invented code 1-2' });
  await sheet.getByRole('button', { name: 'Add it' }).click();
  await expect(sheet.getByRole('alert')).toHaveText(
    'Limit: expected a length for “fence no higher than”',
  );
  await fill(sheet, { Limit: 'low' });
  await sheet.getByRole('button', { name: 'Add it' }).click();
  await expect(sheet.getByRole('alert')).toContainText('Limit: “low”');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  await fill(sheet, { Limit: `3'` });
  await sheet.getByRole('button', { name: 'Add it' }).click();
  await expect(sheet.getByRole('table', { name: 'Inventedville' })).toContainText(
    `fence no higher than 3'-0"`,
  );
  await close();

  await card.getByRole('button', { name: 'Take 1 of its rules over' }).click();
  await expect(card.getByRole('button', { name: 'All its rules are here' })).toBeDisabled();
  await expect(card.getByRole('table')).toContainText('As the book has it.');
  const flags = page.getByRole('region', { name: 'Flags' });
  const high = flags
    .getByRole('listitem')
    .filter({ hasText: `Inventedville: fence no higher than 3'-0" (Invented code 1-2)` });
  await expect(high.first()).toBeVisible();
  const count = await high.count();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(high).toHaveCount(0);
  await page.getByRole('button', { name: /^Redo/ }).click();
  await expect(high).toHaveCount(count);

  await high.first().getByRole('button', { name: 'Accept with a reason' }).click();
  await high.first().getByLabel('Reason').fill('The town let it pass');
  await high.first().getByLabel('Initials').fill('AB');
  await high.first().getByLabel('Initials').press('Enter');
  await high.first().getByRole('button', { name: 'Accept', exact: true }).click();
  await expect(high.first()).toContainText(/Accepted by AB, .*: The town let it pass/);
  // a flag leads to what it stands on: the fence line
  await high.first().getByRole('button').first().click();
  await expect(card).toHaveCount(0);

  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  const words = (await textsOf(file)).flat().join(' ');
  expect(words).toMatch(/Accepted by AB, [\d-]+: The town let it pass/);
  expect(words).toContain('Where it says so');
  expect(words.match(/Invented code 1-2/g)?.length).toBeGreaterThan(1);
});

test('rules of the yard are its own until they are kept in the book, which goes out and in as a file', async ({
  page,
}) => {
  const yard = yardPage(page);
  const { sheet, card, onCard, close, fill } = rulesOn(page);
  await page.goto('/?sample=back-yard');
  const open = await onCard();
  await card.getByRole('button', { name: 'Add a rule' }).click();
  await card.getByLabel('What it limits').selectOption('In words alone');
  await fill(card, { Town: 'Invented Falls' });
  await card.getByRole('button', { name: 'Add it' }).click();
  await expect(card.getByRole('alert')).toContainText('In words: expected what the town asks');
  await fill(card, { 'In words': '=Finished side out' });
  await card.getByRole('button', { name: 'Add it' }).click();
  await expect(card).toContainText('as the company has it, no source told');
  const flags = page.getByRole('region', { name: 'Flags' });
  const told = flags.getByText(/Invented Falls: =Finished side out .+not compared/);
  await expect(told).toHaveCount(1);
  await card.getByRole('button', { name: 'Keep in the book' }).click();
  await expect(card).toContainText('As the book has it.');

  await open.click();
  await sheet.getByRole('button', { name: 'Edit: =Finished side out' }).click();
  await fill(sheet, { 'Where the town says so': 'By telephone' });
  await sheet.getByRole('button', { name: 'Keep it so' }).click();
  await expect(sheet.getByRole('table')).toContainText('By telephone');
  const exported = await yard.download(() =>
    sheet.getByRole('button', { name: 'Export CSV' }).click(),
  );
  const text = readFileSync(exported, 'utf8');
  // no cell that a spreadsheet would run
  expect(text).toContain(`Invented Falls,,,'=Finished side out,By telephone,`);
  const bad = `${text}Invented Falls,fence no taller,48,,,\r\n,fence no higher than,48,,,\r\nInventedville,fence no higher than,48,,,\r\n`;
  await page
    .getByLabel('CSV file to import')
    .setInputFiles({ name: 'rules.csv', mimeType: 'text/csv', buffer: Buffer.from(bad) });
  const preview = sheet.getByRole('group', { name: 'What rules.csv would do' });
  await expect(preview).toContainText('line 3: Measure: expected nothing, fence no higher than');
  await expect(preview).toContainText('line 4: Town: expected a name');
  await expect(preview).toContainText('In the book as they are: 1.');
  await preview.getByRole('button', { name: 'Take 1 into the book' }).click();
  await expect(sheet.getByRole('table', { name: 'Inventedville' })).toBeVisible();
  const undo = sheet.getByRole('button', { name: /^Undo/ });
  await undo.click();
  await expect(sheet.getByRole('table', { name: 'Inventedville' })).toHaveCount(0);
  await sheet.getByRole('button', { name: 'Remove: =Finished side out' }).click();
  await expect(sheet).toContainText('No rules yet.');
  await undo.click();
  await close();

  // the yard keeps its own till it is told otherwise
  await expect(card.getByRole('table')).not.toContainText('By telephone');
  await card.getByRole('button', { name: 'Take the book’s' }).click();
  await expect(card.getByRole('table')).toContainText('By telephone');
  await card.getByRole('button', { name: 'Remove: =Finished side out' }).click();
  await expect(told).toHaveCount(0);
  await page.reload();
  await (await onCard()).click();
  await expect(sheet.getByRole('table', { name: 'Invented Falls' })).toContainText('By telephone');
});
