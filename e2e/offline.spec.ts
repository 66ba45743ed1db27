import { expect, test, type Page } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { laterBuild, laterMark, serveBuild, type Served } from './servedBuild.ts';
import { yardPage } from './yardPage.ts';

test.use({ serviceWorkers: 'allow' });

const tabs = ['Openings', 'Load list', 'Crew sheet', 'Yard'];

/** Opens the program once, until the device has all of it. */
const visit = async (page: Page, { address }: Served, path: string): Promise<void> => {
  await page.goto(address + path);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
};

/** Draws a house; `begun` once its first corner is set. */
const drawHouse = async (page: Page, begun = async (): Promise<void> => {}): Promise<void> => {
  const yard = yardPage(page);
  await page.getByRole('button', { name: 'Draw the house' }).click();
  await yard.pressAt(150, 250);
  await begun();
  await yard.piece(`40'`, 'East, to the right');
  await yard.piece(`28'`, 'South, down');
  await yard.piece(`40'`, 'West, to the left');
  await yard.close();
};

const shelves = (page: Page): Promise<string[]> => page.evaluate(() => caches.keys());

test('from the second visit on all of it works with no network, and what was drawn is there again', async ({
  page,
  context,
}) => {
  const served = await serveBuild('dist');
  await visit(page, served, '/index.html');
  await page.close();
  await served.stop();
  await context.setOffline(true);

  const second = await context.newPage();
  const yard = yardPage(second);
  await second.goto(`${served.address}/index.html`);
  await drawHouse(second);
  await second.getByRole('button', { name: 'Show all' }).click();
  for (const tab of tabs) {
    await yard.show(tab);
    await expect(second.getByRole('heading', { name: tab, level: 1 })).toBeAttached();
    await expect(second.getByRole('alert')).toHaveCount(0);
  }
  await yard.show('Crew sheet');
  const pdf = await yard.download(() =>
    second.getByRole('button', { name: 'Download PDF' }).click(),
  );
  expect((await textsOf(pdf)).flat().join(' ')).toContain('Lathline crew sheet');
  await yard.download(() =>
    second.getByRole('button', { name: 'Download PNG of page 1 Cover' }).click(),
  );
  const drawn = await yard.saved();
  expect(Object.keys(drawn.marks)).toHaveLength(4);
  await second.close();

  const third = await context.newPage();
  await third.goto(`${served.address}/index.html`);
  expect(await yardPage(third).saved()).toEqual(drawn);
  await third.getByRole('button', { name: 'Job & file' }).click();
  await third.getByRole('button', { name: 'Hillside' }).click();
  expect(Object.keys((await yardPage(third).saved()).shots)).not.toEqual([]);
});

test('another language is on the device too, though it was never spoken', async ({
  page,
  context,
}) => {
  const served = await serveBuild('dist');
  await visit(page, served, '/index.html');
  await page.close();
  await served.stop();
  await context.setOffline(true);
  const second = await context.newPage();
  await second.goto(`${served.address}/index.html`);
  await second.getByRole('button', { name: 'Job & file' }).click();
  await second.getByRole('button', { name: 'Español' }).click();
  await expect(second.getByRole('link', { name: 'Hoja de cuadrilla' })).toBeVisible();
  await expect(second.locator('html')).toHaveAttribute('lang', 'es');
});

test('the bare address goes with no network where the server sent it', async ({
  page,
  context,
}) => {
  const served = await serveBuild('dist');
  await visit(page, served, '/');
  await served.stop();
  await context.setOffline(true);
  await page.goto(`${served.address}/`);
  await expect(page).toHaveURL(`${served.address}/?sample=back-yard`);
  await expect(yardPage(page).pad).toBeVisible();
  expect(Object.keys((await yardPage(page).saved()).gates)).toEqual(['gate:drive', 'gate:walk']);
});

/** Marks a page, so that one that was loaded anew is told. */
const mark = (page: Page): Promise<void> =>
  page.evaluate(() => {
    Object.assign(window, { marked: true });
  });
const isMarked = (page: Page): Promise<boolean> => page.evaluate(() => 'marked' in window);

test('a newer version waits until it is taken, never while something is drawn, and other pages go on', async ({
  page,
  context,
}) => {
  const served = await serveBuild('dist');
  const later = laterBuild('dist', /^sheetWorker-/);
  await visit(page, served, '/index.html');
  await page.reload();
  const other = await context.newPage();
  await other.goto(`${served.address}/index.html`);
  await mark(page);
  await mark(other);
  await expect(page.locator(laterMark)).toHaveCount(0);

  served.show(later.folder);
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });
  const told = (on: Page) => on.getByText('A newer version is ready.');
  const key = (on: Page) => on.getByRole('button', { name: 'Take it; the drawing stays' });
  await expect(told(page)).toBeVisible();
  await expect(told(other)).toBeVisible();

  await expect(key(page)).toBeEnabled();
  await drawHouse(page, () =>
    expect(page.getByRole('button', { name: 'Finish the piece first' })).toBeDisabled(),
  );
  await expect(key(page)).toBeEnabled();
  const drawn = await yardPage(page).saved();
  expect(Object.keys(drawn.marks)).toHaveLength(4);
  // nothing was taken by itself
  expect(await isMarked(page)).toBe(true);

  await key(page).click();
  await expect(page.locator(laterMark)).toHaveCount(1);
  await expect(told(page)).toHaveCount(0);
  expect(await yardPage(page).saved()).toEqual(drawn);

  // the other page was not loaded anew, and draws with a part that the server has no more
  expect(await isMarked(other)).toBe(true);
  await yardPage(other).show('Crew sheet');
  await expect(other.getByText('pages, as they will be printed')).toBeVisible();
  expect(await shelves(other)).toHaveLength(2);

  await key(other).click();
  await expect(other.locator(laterMark)).toHaveCount(1);
  await page.close();
  await other.reload();
  await expect.poll(() => shelves(other)).toEqual(['lathline later']);
  expect(served.missing).toEqual([]);
  await served.stop();
  later.remove();
});
