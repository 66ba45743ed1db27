import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { PDFDocument } from 'pdf-lib';
import { saveSite } from '../src/site/saveSite.ts';
import type { Underlay } from '../src/site/underlay.ts';
import { lathSheet } from './lathSheet.ts';
import { dropFile, pdfFile, type MadeFile } from './pictureFiles.ts';
import { filesIn, qpdfCheck } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

const pdf = (name: string, buffer: Buffer): MadeFile => ({
  name,
  mimeType: 'application/pdf',
  buffer,
});

const download = async (page: Page): Promise<Buffer> => {
  const yard = yardPage(page);
  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  expect(qpdfCheck(file)).toContain('No syntax or stream encoding errors found');
  expect(await filesIn(file)).toHaveLength(1);
  return readFileSync(file);
};

test('a crew sheet that is dropped is the drawing again, and its sheet has the same bytes', async ({
  page,
}, info) => {
  const yard = yardPage(page);
  await page.goto('/?sample=taped-yard');
  const site = await yard.saved();
  const first = await download(page);
  // so that both are there to be compared where they differ
  writeFileSync(info.outputPath('page.pdf'), first);
  expect(first.equals(readFileSync(lathSheet(site, info.outputPath('yard'))))).toBe(true);

  await yard.show('Yard');
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'New yard' }).click();
  await expect(page.getByRole('heading', { name: 'Start with what stands still' })).toBeVisible();
  const empty = await yard.saved();
  await dropFile(page, pdf('crew-sheet.pdf', first));
  await expect(page.getByRole('heading', { name: 'Start with what stands still' })).toBeHidden();
  expect(saveSite(await yard.saved())).toBe(saveSite(site));
  expect((await download(page)).equals(first)).toBe(true);

  await yard.show('Yard');
  await page.getByRole('button', { name: /^Undo/ }).first().click();
  expect(saveSite(await yard.saved())).toBe(saveSite(empty));
});

test('a PDF that carries a spoilt site says so, one that carries other files lies under the drawing', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard');
  const before = saveSite(await yard.saved());
  const lot = pdfFile('lot.pdf', ['Lot 7']);
  const carrying = async (name: string, text: string): Promise<MadeFile> => {
    const doc = await PDFDocument.load(lot.buffer);
    await doc.attach(new TextEncoder().encode(text), name, { mimeType: 'application/json' });
    return pdf('lot.pdf', Buffer.from(await doc.save()));
  };
  await dropFile(page, await carrying('yard.site.json', before.slice(0, 900)));
  await expect(page.getByRole('status').filter({ hasText: 'lot.pdf' })).toContainText(
    /lot\.pdf: the site file in it, “yard\.site\.json”: site file is cut off or damaged: .*; the drawing is as it was/,
  );
  expect(saveSite(await yard.saved())).toBe(before);

  await dropFile(page, await carrying('survey.json', '{}'));
  await expect(page.getByRole('status').filter({ hasText: 'lot.pdf' })).toContainText(
    'lot.pdf: under the drawing; the file in it, “survey.json”, is left out. Say how large it is',
  );
  const laid = Object.values<Underlay>((await yard.saved()).underlays);
  expect(laid.map(({ label }) => label)).toEqual(['lot']);
});

test('a crew sheet is opened as a file is, and put under the drawing where a picture is asked for', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=taped-yard');
  const site = saveSite(await yard.saved());
  const sheet = pdf('crew-sheet.pdf', await download(page));
  await page.goto('/?sample=back-yard#yard');
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByLabel('Site file to open').setInputFiles(sheet);
  await expect(page.getByText('Sample yard: taped in twenty minutes').first()).toBeVisible();
  expect(saveSite(await yard.saved())).toBe(site);

  await yard.take('Picture');
  await page.getByLabel('Picture or PDF to put under the drawing').setInputFiles(sheet);
  await expect(page.getByRole('dialog', { name: 'Which page?' })).toBeVisible();
});
