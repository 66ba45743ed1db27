import { expect, test, type Page } from '@playwright/test';
import { openSite } from '../src/site/openSite.ts';
import type { Site } from '../src/site/site.ts';
import { yardPage } from './yardPage.ts';

/** What the browser's pickers would give: files of its own, which are read and written like any other. */
const withPickers = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const handleOf = async (name: string) =>
      (await navigator.storage.getDirectory()).getFileHandle(name, { create: true });
    const asked = { save: 'own.site.json', open: 'own.site.json' };
    Object.assign(window, {
      asked,
      showSaveFilePicker: () => handleOf(asked.save),
      showOpenFilePicker: async () => [await handleOf(asked.open)],
    });
  });

const textOf = (page: Page, name: string): Promise<string> =>
  page.evaluate(async (file) => {
    const folder = await navigator.storage.getDirectory();
    return (await (await folder.getFileHandle(file)).getFile()).text();
  }, name);

/** As somebody else's program would. */
const write = (page: Page, name: string, text: string): Promise<void> =>
  page.evaluate(
    async ([file = '', content = '']) => {
      const folder = await navigator.storage.getDirectory();
      const stream = await (await folder.getFileHandle(file)).createWritable();
      await stream.write(content);
      await stream.close();
    },
    [name, text],
  );

const siteIn = async (page: Page, name: string): Promise<Site> => {
  const opened = openSite(await textOf(page, name));
  if (!opened.ok) throw new Error(opened.reason);
  return opened.value;
};

const files = (page: Page) => page.getByRole('region', { name: 'Files' });
const press = (page: Page, name: string) => files(page).getByRole('button', { name }).click();
const sheet = (page: Page) => page.getByRole('button', { name: 'Job & file' }).click();
const says = (page: Page, text: string) =>
  expect(page.getByRole('status').filter({ hasText: text })).toBeVisible();

const named = async (page: Page, name: string): Promise<void> => {
  await page.getByLabel('Job name').fill(name);
  await page.getByLabel('Job name').press('Enter');
};

test('a job is saved to its own file again, also after the page is loaded again', async ({
  page,
}) => {
  await withPickers(page);
  await page.goto('/?sample=back-yard');
  await sheet(page);
  await named(page, 'Invented 1');
  await press(page, 'Save to a file that stays its own');
  await says(page, 'Saved to own.site.json');
  expect((await siteIn(page, 'own.site.json')).job.name).toBe('Invented 1');
  await named(page, 'Invented 2');
  await page.reload();
  await sheet(page);
  await press(page, 'Save to own.site.json');
  await says(page, 'Saved to own.site.json');
  expect((await siteIn(page, 'own.site.json')).job.name).toBe('Invented 2');
});

test('a file that somebody else has changed is not written over before a person says so', async ({
  page,
}) => {
  await withPickers(page);
  await page.goto('/?sample=back-yard');
  await sheet(page);
  await named(page, 'Invented 1');
  await press(page, 'Save to a file that stays its own');
  await says(page, 'Saved to own.site.json');
  const text = await textOf(page, 'own.site.json');
  const other = text.replace('Invented 1', 'From elsewhere');
  await write(page, 'own.site.json', other);
  await named(page, 'Invented 3');
  await press(page, 'Save to own.site.json');
  const ask = files(page).getByRole('alert');
  await expect(ask).toContainText('own.site.json is not what this job last read');
  expect(await textOf(page, 'own.site.json')).toBe(other);
  await press(page, 'Leave it');
  await expect(ask).toBeHidden();

  // both are kept
  await press(page, 'Save to own.site.json');
  await page.evaluate(() => {
    (window as unknown as { asked: { save: string } }).asked.save = 'second.site.json';
  });
  await press(page, 'Keep both: save to another file');
  await says(page, 'Saved to second.site.json');
  expect(await textOf(page, 'own.site.json')).toBe(other);
  expect((await siteIn(page, 'second.site.json')).job.name).toBe('Invented 3');

  // it is written over
  await write(page, 'second.site.json', other);
  await press(page, 'Save to second.site.json');
  await press(page, 'Write over it');
  await expect(ask).toBeHidden();
  await expect
    .poll(async () => (await siteIn(page, 'second.site.json')).job.name)
    .toBe('Invented 3');
});

test('a file that is opened stays the file of the job that it becomes', async ({ page }) => {
  await withPickers(page);
  await page.goto('/?sample=sports-court');
  await sheet(page);
  await named(page, 'Invented court');
  await press(page, 'Save to a file that stays its own');
  await says(page, 'Saved to own.site.json');
  await page.goto('/');
  // nothing is left of the job that it was saved from
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        indexedDB.deleteDatabase('lathline-copies');
        const asked = indexedDB.deleteDatabase('lathline');
        asked.addEventListener('success', () => resolve());
      }),
  );
  await page.goto('/?sample=back-yard');
  await sheet(page);
  await press(page, 'New yard');
  await sheet(page);
  await press(page, 'Open file');
  await expect(page).toHaveTitle(/^Invented court/);
  await sheet(page);
  await named(page, 'Invented court 2');
  await press(page, 'Save to own.site.json');
  await says(page, 'Saved to own.site.json');
  expect((await siteIn(page, 'own.site.json')).job.name).toBe('Invented court 2');
  await page.getByRole('button', { name: 'Done' }).click();
  expect((await yardPage(page).saved()).job.name).toBe('Invented court 2');
});

test('a browser that shares files is handed the job as a file', async ({ page }) => {
  await page.addInitScript(() => {
    const handed: string[] = [];
    Object.assign(window, { handed });
    Object.assign(Navigator.prototype, {
      canShare: ({ files: [file] }: { files: File[] }) => file?.type === 'text/plain',
      share: async ({ files: [file] }: { files: File[] }) => {
        handed.push(file?.name ?? '', (await file?.text()) ?? '');
      },
    });
  });
  await page.goto('/?sample=back-yard');
  await sheet(page);
  await press(page, 'Hand over file');
  const handed = () =>
    page.evaluate(() => (window as unknown as { handed: readonly string[] }).handed);
  await expect.poll(async () => (await handed()).length).toBe(2);
  const [name = '', text = ''] = await handed();
  expect(name).toMatch(/\.site\.json\.txt$/);
  expect(openSite(text).ok).toBe(true);
  // whoever gets it opens it as it came
  await press(page, 'New yard');
  await sheet(page);
  await page
    .getByLabel('Site file to open')
    .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
  await expect(page.getByRole('dialog')).toBeHidden();
  const opened = openSite(text);
  expect(opened.ok && Object.keys((await yardPage(page).saved()).gates)).toEqual(
    opened.ok && Object.keys(opened.value.gates),
  );
});
