import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Browser, type Page } from '@playwright/test';
import { keysOn } from './keys.ts';
import { yardPage } from './yardPage.ts';

/** Another device: its own store, the same program. */
const device = async (browser: Browser, from: Page): Promise<Page> => {
  const viewport = from.viewportSize();
  const context = await browser.newContext(viewport === null ? {} : { viewport });
  return context.newPage();
};

const openBytes = async (page: Page, name: string, buffer: Buffer): Promise<void> => {
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page
    .getByLabel('Site file to open')
    .setInputFiles({ name, mimeType: 'application/json', buffer });
};

const savedBytes = async (page: Page): Promise<Buffer> => {
  await page.getByRole('button', { name: 'Job & file' }).click();
  const path = await yardPage(page).download(() =>
    page.getByRole('button', { name: 'Save file' }).click(),
  );
  await page.getByRole('button', { name: 'Done' }).click();
  return readFileSync(path);
};

/** Types into the title block. */
const changeJob = async (page: Page, field: string, text: string): Promise<void> => {
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByLabel(field, { exact: true }).fill(text);
  await page.getByLabel(field, { exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Done' }).click();
};

/** Calls the drive gate otherwise, on its card in the yard. */
const renameDrive = async (page: Page, name: string): Promise<void> => {
  const yard = yardPage(page);
  await yard.show('Openings');
  const drive = page.getByRole('article').first();
  await drive.getByRole('button', { name: 'Show in the yard' }).click();
  await yard.onCard(async () => {
    const fold = page.getByRole('group').filter({ hasText: 'Name and place' });
    await fold.getByText('Name and place').click();
    const field = fold.getByLabel('Name', { exact: true });
    await field.fill(name);
    await field.press('Enter');
  });
};

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ }).first();
const redo = (page: Page) => page.getByRole('button', { name: /^Redo/ }).first();

test('two copies that were changed apart are merged, the conflict chosen on the drawing, undone and redone', async ({
  page,
  browser,
}) => {
  await page.goto('/?sample=back-yard');
  const first = await savedBytes(page);
  expect((await savedBytes(page)).equals(first)).toBe(true);

  const office = await device(browser, page);
  await office.goto('/index.html');
  await openBytes(office, 'yard.site.json', first);
  await expect(office.getByRole('dialog')).toBeHidden();
  await renameDrive(office, 'Truck gate');
  await changeJob(office, 'Revision', 'B');
  const theirs = await savedBytes(office);
  await office.context().close();

  await renameDrive(page, 'Front gate');
  await changeJob(page, 'Customer', 'A. Invented');
  const before = await yardPage(page).saved();
  await openBytes(page, 'office.site.json', theirs);
  const sheet = page.getByRole('dialog', { name: 'A copy of this job' });
  await expect(sheet).toContainText('changed apart from it');
  await expect(sheet.getByRole('listitem')).toHaveText(['the job changed']);
  await expect(sheet).toContainText('1 conflict is to be chosen.');

  await sheet.getByRole('button', { name: 'Merge' }).click();
  const conflicts = page.getByRole('dialog', { name: 'Conflicts' });
  await expect(conflicts.getByRole('heading', { level: 3 })).toHaveText(
    '1 of 1. Gate Front gate: name',
  );
  await expect(conflicts.getByRole('figure')).toHaveCount(2);
  await expect(conflicts.getByRole('figure').first()).toContainText('Front gate');
  await expect(conflicts.getByRole('figure').last()).toContainText('Truck gate');
  await expect(conflicts.getByRole('img')).toHaveCount(2);
  // both plans show the whole of what they are about, side by side
  const [left, right] = await Promise.all(
    [0, 1].map((n) => conflicts.getByRole('img').nth(n).boundingBox()),
  );
  expect(left?.y).toBe(right?.y);
  expect((right?.x ?? 0) + (right?.width ?? 0)).toBeLessThanOrEqual(
    page.viewportSize()?.width ?? 0,
  );
  const found = await new AxeBuilder({ page }).include('dialog').analyze();
  expect(found.violations).toEqual([]);

  await conflicts.getByRole('button', { name: 'Done' }).click();
  await expect(conflicts.getByRole('status')).toHaveText('1 conflict is left to choose.');
  const keys = keysOn(page);
  await keys.press(conflicts.getByRole('button', { name: 'Take what came' }), 'Shift+Tab');
  await expect(conflicts.getByRole('button', { name: 'Take what came' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await keys.press(conflicts.getByRole('button', { name: 'Done' }));
  await expect(page.getByRole('dialog')).toBeHidden();

  const labels = async () => {
    const { gates, job } = await yardPage(page).saved();
    return [
      Object.values(gates).some(({ label }) => label === 'Truck gate'),
      Object.values(gates).some(({ label }) => label === 'Front gate'),
      job.revision,
      job.customer,
    ];
  };
  expect(await labels()).toEqual([true, false, 'B', 'A. Invented']);
  await undo(page).click();
  expect((await yardPage(page).saved()).gates).toEqual(before.gates);
  await redo(page).click();
  expect(await labels()).toEqual([true, false, 'B', 'A. Invented']);

  // what came once is in the drawing: it comes no second time
  await openBytes(page, 'office.site.json', theirs);
  await expect(sheet).toContainText('all that is in it is in the drawing already');
  await expect(sheet.getByRole('button', { name: 'Merge' })).toBeHidden();
  await sheet.getByRole('button', { name: 'Leave' }).click();
  expect(await labels()).toEqual([true, false, 'B', 'A. Invented']);
});

test('a copy can be opened as a job of its own, and left', async ({ page, browser }) => {
  await page.goto('/?sample=back-yard');
  const first = await savedBytes(page);
  const office = await device(browser, page);
  await office.goto('/index.html');
  await openBytes(office, 'yard.site.json', first);
  await expect(office.getByRole('dialog')).toBeHidden();
  await changeJob(office, 'Revision', 'B');
  const theirs = await savedBytes(office);
  await office.context().close();

  await openBytes(page, 'office.site.json', theirs);
  const sheet = page.getByRole('dialog', { name: 'A copy of this job' });
  await expect(sheet).toContainText('newer copy');
  await sheet.getByRole('button', { name: 'Leave' }).click();
  expect((await savedBytes(page)).equals(first)).toBe(true);

  await openBytes(page, 'office.site.json', theirs);
  await sheet.getByRole('button', { name: 'Open as a job of its own' }).click();
  expect((await yardPage(page).saved()).job.revision).toBe('B');
  await undo(page).click();
  expect((await savedBytes(page)).equals(first)).toBe(true);
});
