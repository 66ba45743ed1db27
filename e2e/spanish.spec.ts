import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { openSite } from '../src/site/openSite.ts';
import { findTool } from '../tests/findTool.ts';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

/** Every length in feet or inches that some pages say. */
const lengthsIn = (pages: readonly (readonly string[])[]): string[] => [
  ...new Set(pages.flat().flatMap((text) => text.match(/\d[\d' /-]*["']/g) ?? [])),
];

test('sheets are in Spanish while the screen stays in English, with every figure @desk', async ({
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

/** The key that speaks a language, on the sheet of the job and its files. */
const languageKey = async (page: Page, sheet: string, language: string): Promise<void> => {
  await page.getByRole('button', { name: sheet }).click();
  // found by whoever reads one of them, whichever is spoken
  const choice = page.getByRole('group', { name: 'Language · Idioma' });
  await choice.getByRole('button', { name: language }).click();
};

test('[A17] the screen speaks the language that is chosen, also after it is loaded anew @phone', async ({
  page,
}) => {
  const yard = yardPage(page);
  const html = page.locator('html');
  await yard.openEmpty();
  await expect(html).toHaveAttribute('lang', 'en');
  await languageKey(page, 'Job & file', 'Español');
  await expect(page.getByRole('link', { name: 'Hoja de cuadrilla' })).toBeVisible();
  await expect(html).toHaveAttribute('lang', 'es');
  await page.reload();
  await expect(page.getByRole('link', { name: 'Lista de carga' })).toBeVisible();
  await expect(html).toHaveAttribute('lang', 'es');
  await yard.show('Hoja de cuadrilla');
  await expect(page.getByLabel('Idioma de las hojas')).toHaveValue('es');
  await languageKey(page, 'Trabajo y archivo', 'English');
  await expect(page.getByRole('link', { name: 'Load list' })).toBeVisible();
  await expect(html).toHaveAttribute('lang', 'en');
});

test('[A17] what is half drawn is finished before another language is spoken, and what is drawn is there then @tablet', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Draw the house' }).click();
  await yard.pressAt(150, 250);
  await yard.piece(`40'`, 'East, to the right');
  await languageKey(page, 'Job & file', 'Español');
  await expect(page.getByText('Finish the piece first; the language is as it was.')).toBeVisible();
  await page.getByRole('button', { name: 'Done' }).click();
  await yard.piece(`28'`, 'South, down');
  await yard.piece(`40'`, 'West, to the left');
  await yard.close();
  const drawn = await yard.saved();
  await languageKey(page, 'Job & file', 'Español');
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  await page.getByRole('button', { name: 'Trabajo y archivo' }).click();
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Guardar archivo' }).click(),
  );
  const again = openSite(readFileSync(file, 'utf8'));
  expect(again.ok && again.value.marks).toEqual(drawn.marks);
});

test.describe('a person whose browser reads Spanish', () => {
  test.use({ locale: 'es-MX' });

  test('[A17] is met in Spanish @phone', async ({ page }) => {
    await page.goto('/index.html');
    await expect(page.getByRole('link', { name: 'Terreno' })).toBeVisible();
    await languageKey(page, 'Trabajo y archivo', 'English');
    await expect(page.getByRole('link', { name: 'Yard' })).toBeVisible();
  });
});

/** Words that no Spanish text has, and hardly an English one is without. */
const english = /\b(?:the|of|and|is|are|was|with|from|this|that|each|not|yet|which)\b/i;

/** Every text in a document. */
const textsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
};

test.describe('a person whose browser reads Spanish, on the sample yard', () => {
  test.use({ locale: 'es-US' });

  test('[A10] reads no English but the names of the document and of what is published @desk-phone', async ({
    page,
  }) => {
    const file = new URL('../sample-sites/back-yard.site.json', import.meta.url);
    const names = textsIn(JSON.parse(readFileSync(file, 'utf8'))).filter((one) =>
      english.test(one),
    );
    const found: string[] = [];
    let lines = 0;
    const read = async (): Promise<void> => {
      await page.locator('details').evaluateAll((all) => {
        for (const one of all) one.setAttribute('open', '');
      });
      const told = await page.evaluate(() =>
        [...document.querySelectorAll('[aria-label]')].map(
          (one) => one.getAttribute('aria-label') ?? '',
        ),
      );
      const shown = (await page.locator('body').innerText()).split('\n');
      const own = [...shown, ...told].map((line) =>
        names.reduce((rest, name) => rest.replaceAll(name, ''), line),
      );
      lines += own.length;
      found.push(...own.filter((line) => english.test(line)));
    };
    await page.goto('/?sample=back-yard');
    for (const tab of ['Terreno', 'Aberturas', 'Lista de carga', 'Hoja de cuadrilla']) {
      await page.getByRole('link', { name: tab, exact: true }).click();
      await expect(page.getByRole('heading', { name: tab, level: 1 })).toBeAttached();
      await read();
    }
    await expect(page.getByText('como se imprimirán')).toBeVisible();
    await read();
    await page.getByRole('button', { name: 'Trabajo y archivo' }).click();
    await read();
    await page.getByRole('button', { name: 'Trabajos en este dispositivo' }).click();
    await read();
    expect(lines).toBeGreaterThan(1000);
    expect([...new Set(found)]).toEqual([]);
  });
});
