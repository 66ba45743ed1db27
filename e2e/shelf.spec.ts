import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { openSite } from '../src/site/openSite.ts';
import { allKept } from './keptPage.ts';
import { noFindings } from './findings.ts';
import { yardPage } from './yardPage.ts';

const openJobs = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'Jobs on this device' }).click();
  await expect(page.getByRole('heading', { name: 'Jobs', exact: true })).toBeVisible();
};

const done = (page: Page) => page.getByRole('button', { name: 'Done' }).click();

const named = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('button', { name: 'Job & file' }).click();
  const field = page.getByLabel('Job name');
  await field.fill(name);
  await field.press('Enter');
  await done(page);
};

const job = (page: Page, name: string) => page.getByRole('listitem', { name, exact: true });

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });

test('jobs are listed, found, opened, copied, renamed, binned and taken back @desk-phone', async ({
  page,
}) => {
  await page.goto('/?sample=back-yard');
  await named(page, 'Invented yard A');
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'New yard' }).click();
  await named(page, 'Invented yard B');
  await openJobs(page);
  await expect(job(page, 'Invented yard A').getByRole('img')).toBeVisible();
  await expect(job(page, 'Invented yard B')).toContainText('On the pad');
  await page.getByLabel('Find by name, customer or place').fill('yard b');
  await expect(page.getByRole('dialog').getByRole('listitem')).toHaveCount(1);
  await page.getByLabel('Find by name, customer or place').fill('');
  await job(page, 'Invented yard A').getByRole('button', { name: 'Duplicate' }).click();
  const copy = job(page, 'Invented yard A, copy');
  await copy.getByRole('button', { name: 'Rename' }).click();
  await copy.getByLabel('New name').fill('Invented yard C');
  await copy.getByLabel('New name').press('Enter');
  await job(page, 'Invented yard C').getByRole('button', { name: 'Put into the bin' }).click();
  const bin = page.getByRole('region', { name: 'In the bin' });
  await expect(bin.getByRole('listitem', { name: 'Invented yard C' })).toBeVisible();
  await bin.getByRole('button', { name: 'Take out of the bin' }).click();
  await expect(bin).toBeHidden();
  await job(page, 'Invented yard A').getByRole('button', { name: 'Put into the bin' }).click();
  await bin.getByRole('button', { name: 'Empty the bin' }).click();
  await bin.getByRole('button', { name: 'Take off for good' }).click();
  await expect(bin).toBeHidden();
  await job(page, 'Invented yard C').getByRole('button', { name: 'Open' }).click();
  const saved = await yardPage(page).saved();
  expect([saved.job.name, Object.keys(saved.gates).length]).toEqual(['Invented yard C', 2]);
  // the copy has the history of what it was made of, and its own steps
  for (const _ of ['name', 'copy', 'name']) await undo(page).click();
  await expect(undo(page)).toBeDisabled();
  await openJobs(page);
  await expect(page.getByRole('dialog').getByRole('listitem')).toHaveCount(2);
});

test('undo and redo go on after the page is loaded again, and over a new yard @tablet', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard');
  const first = await yard.saved();
  await named(page, 'Invented 1');
  await named(page, 'Invented 2');
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'New yard' }).click();
  await named(page, 'Invented 3');
  await allKept(page);
  await page.reload();
  for (const _ of ['3', 'new', '2', '1']) await undo(page).click();
  expect(await yard.saved()).toEqual(first);
  await expect(undo(page)).toBeDisabled();
  await allKept(page);
  await page.reload();
  const redo = page.getByRole('button', { name: /^Redo/ });
  await redo.click();
  await redo.click();
  expect((await yard.saved()).job.name).toBe('Invented 2');
});

test('what was kept before there were jobs is the first job @desk', async ({ page }) => {
  const text = readFileSync(
    new URL('../sample-sites/sports-court.site.json', import.meta.url),
    'utf8',
  );
  const site = openSite(text);
  if (!site.ok) throw new Error(site.reason);
  // a page of the same place that runs nothing of the program
  await page.route('**/plain', (route) =>
    route.fulfill({ body: '<p>plain</p>', contentType: 'text/html' }),
  );
  await page.goto('/plain');
  await page.evaluate(
    (kept) =>
      new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open('lathline', 1);
        asked.addEventListener('upgradeneeded', () => asked.result.createObjectStore('desk'));
        asked.addEventListener('success', () => {
          const deal = asked.result.transaction('desk', 'readwrite');
          deal.objectStore('desk').put(kept, 'site');
          deal.objectStore('desk').put([], 'pictures');
          deal.objectStore('desk').put({ theme: 'dark' }, 'session');
          deal.addEventListener('complete', () => {
            asked.result.close();
            resolve();
          });
          deal.addEventListener('error', () => reject(new Error('not written')));
        });
      }),
    site.value,
  );
  await page.goto('/index.html');
  // a file that is saved says besides that it was
  const { lineage } = await yardPage(page).saved();
  expect(await yardPage(page).saved()).toEqual({ ...site.value, lineage });
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await openJobs(page);
  await expect(page.getByRole('listitem', { name: site.value.job.name })).toBeVisible();
});

test('storage that is taken away under the program is told, and the job is written again @tablet', async ({
  page,
}) => {
  await page.goto('/?sample=back-yard');
  await named(page, 'Invented 1');
  await allKept(page);
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const asked = indexedDB.deleteDatabase('lathline');
        asked.addEventListener('success', () => resolve());
      }),
  );
  const line = page.getByRole('alert');
  await expect(line).toContainText('taken away while the program was open');
  await allKept(page);
  await line.getByRole('button', { name: 'Put away' }).click();
  await page.reload();
  expect((await yardPage(page).saved()).job.name).toBe('Invented 1');
});

test('a browser that keeps nothing says so, with a key that saves a file @phone', async ({
  page,
}) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('no storage here', 'SecurityError');
    };
  });
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard');
  await named(page, 'Invented 1');
  const line = page.getByRole('alert');
  await expect(line).toContainText('This browser keeps nothing for this program');
  const path = await yard.download(() => line.getByRole('button', { name: 'Save file' }).click());
  const saved = openSite(readFileSync(path, 'utf8'));
  expect(saved.ok && saved.value.job.name).toBe('Invented 1');
});

test('axe finds nothing on the list of jobs, full or empty, in any light, and it fits @desk', async ({
  page,
}) => {
  const check = async (): Promise<void> => {
    for (const theme of ['day', 'dark', 'sun']) {
      await page.evaluate((light) => (document.documentElement.dataset['theme'] = light), theme);
      await noFindings(page);
    }
    // at 200 % a desk of 1280 px has 640, and a phone of 390 has 320 at least
    for (const width of [640, 320]) {
      await page.setViewportSize({ width, height: 700 });
      const over = await page
        .getByRole('dialog')
        .evaluate((element) => element.scrollWidth - element.clientWidth);
      expect(over).toBe(0);
    }
  };
  await yardPage(page).openEmpty();
  await openJobs(page);
  await expect(page.getByText('No job is kept yet')).toBeVisible();
  await check();
  await done(page);
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'Back yard' }).click();
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'Sports court' }).click();
  await openJobs(page);
  const list = page.getByRole('dialog');
  await list.getByRole('button', { name: 'Put into the bin' }).first().click();
  await list.getByRole('button', { name: 'Rename' }).first().click();
  await list.getByRole('button', { name: 'Empty the bin' }).click();
  await check();
});
