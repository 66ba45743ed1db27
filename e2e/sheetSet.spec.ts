import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

const openSheet = async (page: Page, sample: string) => {
  const yard = yardPage(page);
  await page.goto(`/?sample=${sample}`);
  await expect(yard.pad).toBeVisible();
  await yard.show('Crew sheet');
  return yard;
};

test('a set is drawn for its reader, and each row of its index is a page @desk-phone', async ({
  page,
}) => {
  const yard = await openSheet(page, 'corner-lot');
  await expect(page.getByText('pages, as they will be printed')).toBeVisible();
  await page.getByLabel('Set for').selectOption('Sales rep');
  await expect(page.getByLabel('Go to page')).toContainText('4 Page for the customer');
  await page.getByLabel('Set for').selectOption('Crew');
  await page.getByLabel('Paper', { exact: true }).selectOption('A4');
  await expect(page.getByLabel('Go to page')).toContainText('Tapes and holes');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  const pages = await textsOf(file);
  const cover = (pages[0] ?? []).join(' ');
  expect(cover).toContain('Set for the crew');
  expect(cover).toContain('To be built');
  expect(pages.length).toBeGreaterThan(5);
  pages.forEach((texts, n) => {
    const found = texts.join(' ').includes(`Sheet ${n + 1} of ${pages.length}`);
    expect(found).toBe(true);
  });
  await page.getByLabel('Go to page').selectOption({ index: 3 });
  await expect(page.locator('#page-3')).toBeInViewport();
});

test('drawing can be stopped and begun again, and what cannot be drawn is told in a line @desk', async ({
  page,
}) => {
  const held: (() => void)[] = [];
  let way: 'hold' | 'refuse' | 'pass' = 'hold';
  await page.route(/sheetWorker/, async (route) => {
    if (way === 'refuse') return route.abort();
    if (way === 'hold') await new Promise<void>((go) => held.push(go));
    return route.continue();
  });
  await openSheet(page, 'back-yard');
  await expect(page.getByText('Drawing the pages…')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Download PDF' })).toBeDisabled();
  await page.getByRole('button', { name: 'Stop drawing' }).click();
  await expect(page.getByText('Drawing was stopped.')).toBeVisible();
  for (const go of held) go();
  way = 'refuse';
  await page.getByRole('button', { name: 'Draw the pages' }).click();
  await expect(page.getByText('The pages could not be drawn')).toBeVisible();
  way = 'pass';
  await page.getByRole('button', { name: 'Draw the pages' }).click();
  await expect(page.getByText('pages, as they will be printed')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Download PDF' })).toBeEnabled();
});

test('a page goes out as a PNG of its size, a table as CSV, and what the font lacks is told @desk', async ({
  page,
}) => {
  const yard = await openSheet(page, 'corner-lot');
  await expect(page.getByText('pages, as they will be printed')).toBeVisible();
  await page.getByLabel('PNG resolution').selectOption('100 dpi');
  const png = readFileSync(
    await yard.download(() =>
      page.getByRole('button', { name: 'Download PNG of page 1 Cover' }).click(),
    ),
  );
  // width and height stand behind the signature and the name of the first chunk (PNG specification)
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([850, 1100]);
  const svg = readFileSync(
    await yard.download(() =>
      page.getByRole('button', { name: 'Download SVG of page 1 Cover' }).click(),
    ),
    'utf8',
  );
  const parsed = await page.evaluate((text) => {
    const read = new DOMParser().parseFromString(text, 'image/svg+xml');
    const names = [...read.querySelectorAll('[data-layer]')].map((one) => one.tagName);
    return { faults: read.querySelectorAll('parsererror').length, names };
  }, svg);
  expect(parsed.faults).toBe(0);
  expect(new Set(parsed.names)).toEqual(new Set(['g']));
  await page.getByText('For other programs and a total station').click();
  await page.getByLabel('Table of the sheets').selectOption('Load list');
  const csv = readFileSync(
    await yard.download(() => page.getByRole('button', { name: 'Download table as CSV' }).click()),
    'utf8',
  );
  expect(csv).toContain('Hog ring');
  await expect(page.getByText('The sheet font has no letters')).toBeHidden();
  await page.getByRole('button', { name: /Job & file/ }).click();
  await page.getByLabel('Job name', { exact: true }).fill('北門');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Escape');
  await expect(page.getByText('no letters for “北門” in Job name: they print as ?')).toBeVisible();
});
