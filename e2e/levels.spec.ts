import { expect, test, type Page } from '@playwright/test';
import { yardPage } from './yardPage.ts';

const notes = (page: Page) => page.getByRole('dialog', { name: 'Level notes' });

/** Writes one level note: what is read on a point, by the names of the fields. */
const write = async (
  page: Page,
  number: number,
  fields: Readonly<Record<string, string>>,
): Promise<void> => {
  const row = notes(page).getByRole('listitem', { name: `Level note ${number}`, exact: true });
  for (const [label, value] of Object.entries(fields)) {
    await row.getByLabel(label, { exact: true }).fill(value);
    await row.getByLabel(label, { exact: true }).press('Enter');
  }
};

/** Opens the notes; on a phone the card that the key is on is pulled up for it. */
const openNotes = async (page: Page): Promise<void> => {
  const pull = page.getByRole('button', { name: /^Pull up/ });
  if (await pull.isVisible()) await pull.click();
  await page.getByRole('button', { name: /^Level notes/ }).click();
};

/** On a phone, lets the pad be seen again. */
const putDown = async (page: Page): Promise<void> => {
  const down = page.getByRole('button', { name: 'Put down' });
  if (await down.isVisible()) await down.click();
};

const add = (page: Page) => notes(page).getByRole('button', { name: 'Add a note', exact: true });

test('a run of levels is worked out, tells how it closed, and gives grade shots their heights', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await yard.take('Grade shot');
  await openNotes(page);
  await notes(page).getByRole('button', { name: 'Start at a benchmark' }).click();
  await write(page, 1, { 'BS, backsight': '5.00', 'Known height': '100' });
  await add(page).click();
  await write(page, 2, { Point: 'P1', 'IS, intermediate': '4.20' });
  await add(page).click();
  await write(page, 3, { Point: 'T1', 'FS, foresight': '6.00', 'BS, backsight': '4.00' });
  await add(page).click();
  await write(page, 4, { Point: 'BM', 'FS, foresight': '2.98' });
  // 100 + 5 - 6 + 4 - 2.98 = 100.02
  await expect(notes(page)).toContainText(`Closes 0.02' high, nobody has said how much is allowed`);
  await notes(page).getByLabel('Allowed misclosure').fill('0.01');
  await notes(page).getByLabel('Allowed misclosure').press('Enter');
  await expect(notes(page)).toContainText(`Closes 0.02' high, 0.01' allowed; not spread`);
  await notes(page).getByLabel('Allowed misclosure').fill('0.03');
  await notes(page).getByLabel('Allowed misclosure').press('Enter');
  await expect(notes(page)).toContainText('spread evenly over the setups');
  // 100 + 5 - 4.20 less the half of 0.02 that is in the first setup
  const second = notes(page).getByRole('listitem', { name: 'Level note 2', exact: true });
  await expect(second).toContainText(`Height 100.79'`);

  await notes(page).getByRole('button', { name: 'Put P1 on the pad' }).click();
  await expect(notes(page)).toBeHidden();
  await putDown(page);
  await yard.pressAt(140, 200);
  await expect(page.getByRole('form', { name: 'Height of this grade shot' })).toContainText(
    'Height of P1',
  );
  await page.getByRole('button', { name: 'Set', exact: true }).click();
  const [shot] = Object.values((await yard.saved()).shots);
  expect(shot?.label).toBe('P1');
  expect(shot?.z).toBeCloseTo(100.79 * 12, 6);

  await openNotes(page);
  await write(page, 2, { 'IS, intermediate': '4.50' });
  await notes(page).getByRole('button', { name: 'Give the grade shots these heights' }).click();
  await notes(page).getByRole('button', { name: 'Done' }).click();
  const [later] = Object.values((await yard.saved()).shots);
  expect(later?.z).toBeCloseTo(100.49 * 12, 6);
});

test('a note that cannot be is told in one line and stays as it was typed', async ({ page }) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await yard.take('Grade shot');
  await openNotes(page);
  await notes(page).getByRole('button', { name: 'Start at a benchmark' }).click();
  await expect(notes(page).getByRole('alert')).toContainText('row 1 (BM) has no reading');
  await write(page, 1, { 'BS, backsight': 'five' });
  await expect(notes(page).getByText(/BS, backsight: .*five/)).toBeVisible();
  await write(page, 1, { 'BS, backsight': '5' });
  await expect(notes(page)).toContainText('The run does not close');
  await notes(page).getByRole('button', { name: 'Undo' }).click();
  await expect(notes(page).getByRole('alert')).toContainText('row 1 (BM) has no reading');
});
