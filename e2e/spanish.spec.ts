import { execFileSync } from 'node:child_process';
import { expect, test } from '@playwright/test';
import { findTool } from '../tests/findTool.ts';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

/** Every length in feet or inches that some pages say. */
const lengthsIn = (pages: readonly (readonly string[])[]): string[] => [
  ...new Set(pages.flat().flatMap((text) => text.match(/\d[\d' /-]*["']/g) ?? [])),
];

test('sheets are in Spanish while the screen stays in English, with every figure', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard');
  await expect(yard.pad).toBeVisible();
  await yard.show('Crew sheet');
  const key = page.getByRole('button', { name: 'Download PDF' });
  await expect(page.getByText('pages, as they will be printed')).toBeVisible();
  const english = await textsOf(await yard.download(() => key.click()));
  await page.getByLabel('Language of the sheets').selectOption('Español');
  await expect(page.getByLabel('Go to page')).toContainText('Cintas y hoyos');
  const file = await yard.download(() => key.click());
  const spanish = await textsOf(file);
  const words = spanish.flat();
  for (const head of ['Portada', 'Aberturas', 'Mantener', 'Cinta lee', 'Precauciones'])
    expect(words).toContain(head);
  for (const head of ['Cover', 'Openings', 'Hold', 'Tape reads', 'Cautions'])
    expect(words).not.toContain(head);
  expect(lengthsIn(english).length).toBeGreaterThan(50);
  expect(lengthsIn(spanish)).toEqual(expect.arrayContaining(lengthsIn(english)));
  const told = execFileSync(findTool('qpdf', 'qpdf'), ['--json', file], {
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  expect(told).toMatch(/"\/Lang": "(?:u:)?es-US"/);
});
