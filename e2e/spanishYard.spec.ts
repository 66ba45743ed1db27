import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { layOutSite } from '../src/engine/layOutSite.ts';
import { tapeReadings } from '../src/engine/posts/tapeReadings.ts';
import { openSite } from '../src/site/openSite.ts';
import type { Site } from '../src/site/site.ts';
import { formatLength } from '../src/units/formatLength.ts';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

/** Words of an English crew sheet, none of them a word of Spanish, of a source or of a part of the book. */
const foreign = [
  'Cover',
  'Openings',
  'Hold',
  'Tape reads',
  'Cautions',
  'Load list',
  'Crew sheet',
  'post',
  'holes',
  'hinge',
  'latch',
  'fabric',
  'from',
  'expected',
  'Check value',
  'Fence',
];

/** The site as the program saves it, by its keys in Spanish. */
const savedIn = async (page: Page): Promise<Site> => {
  await page.getByRole('button', { name: 'Trabajo y archivo' }).click();
  const path = await yardPage(page).download(() =>
    page.getByRole('button', { name: 'Guardar archivo' }).click(),
  );
  await page.getByRole('button', { name: 'Listo' }).click();
  const opened = openSite(readFileSync(path, 'utf8'));
  if (!opened.ok) throw new Error(opened.reason);
  return opened.value;
};

/** Chooses Spanish, then lengths in millimetres. */
const speakSpanish = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByRole('button', { name: 'Español' }).click();
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  await page.getByRole('button', { name: 'Trabajo y archivo' }).click();
  await page.getByLabel('Escritos en').selectOption({ label: 'Milímetros' });
  await page.getByRole('button', { name: 'Listo' }).click();
};

/** Draws two sides of fence, twelve metres east and nine south, with a gate in the middle of the first. */
const drawYard = async (page: Page): Promise<void> => {
  const yard = yardPage(page);
  const entry = page.getByRole('form', { name: 'Largo y dirección de esta pieza' });
  const tools = page.getByRole('toolbar', { name: 'Herramientas' });
  await page.getByRole('button', { name: 'Dibujar una cerca' }).click();
  await expect(page.getByText('Tocar donde empieza la cerca')).toBeVisible();
  await yard.pressAt(200, 250);
  for (const [length, way] of [
    ['12 m', 'Este, a la derecha'],
    ['9000', 'Sur, abajo'],
  ] as const) {
    await entry.getByLabel('Largo', { exact: true }).fill(length);
    await entry.getByRole('button', { name: way }).click();
  }
  await entry.getByRole('button', { name: 'Terminar' }).click();
  await page.getByRole('button', { name: 'Ver todo' }).click();
  const { marks } = await savedIn(page);
  const all = Object.values(marks);
  const [left, top] = [Math.min(...all.map(({ x }) => x)), Math.max(...all.map(({ y }) => y))];
  await tools.getByRole('button', { name: 'Portón' }).click();
  await expect(page.getByText('Señalar el lado donde va el portón')).toBeVisible();
  await yard.pressGround(left + 6000 / 25.4, top);
};

test('[A10] [A13] a yard is drawn, checked and printed in Spanish and in millimetres @tablet', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await speakSpanish(page);
  await drawYard(page);
  const site = await savedIn(page);
  expect(site.lengths.system).toBe('mm');
  const layout = layOutSite(site);
  const lines = Object.values(layout.lines);
  const [gate] = Object.values(layout.gates);
  expect(gate?.placed).toBe(true);
  const legs = lines.flatMap((line) => line.legs.map(({ length }) => length * 25.4));
  [12_000, 9000].forEach((typed, n) => expect(legs[n]).toBeCloseTo(typed, 6));
  const write = (length: Parameters<typeof formatLength>[0]) => formatLength(length, site.lengths);
  const opening = write(gate?.opening.target ?? (0 as never));
  expect(opening).toMatch(/^\d+ mm$/);

  await yard.show('Aberturas');
  const card = page.getByRole('article');
  await expect(card).toContainText(opening);
  await expect(card).toContainText('Vale de');
  const sign = card.getByRole('group', { name: 'Firma' });
  await sign.getByLabel('Iniciales').fill('KB');
  await sign.getByLabel('Día').fill('2 de mayo');
  await sign.getByRole('button', { name: 'Firmar' }).click();
  await expect(sign.getByText('Visto bueno de KB, 2 de mayo')).toBeVisible();

  await yard.show('Hoja de cuadrilla');
  await expect(page.getByLabel('Idioma de las hojas')).toHaveValue('es');
  await page.getByLabel('Papel', { exact: true }).selectOption({ label: 'A4' });
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Descargar PDF' }).click(),
  );
  const texts = (await textsOf(file)).flat();
  for (const head of ['Portada', 'Aberturas', 'Mantener', 'Cinta lee', 'Precauciones'])
    expect(texts).toContain(head);
  const written = texts.join('\n');
  expect(written).toContain(opening);
  for (const run of lines.flatMap(({ runs }) => runs)) {
    const { spaces, total, posts } = tapeReadings(run, 'start', site.lengths);
    for (const length of [...spaces, total, ...posts.map(({ reading }) => reading)])
      expect(written).toContain(write(length));
  }
  expect(written).not.toMatch(/\d'-\d/);
  const strays = foreign.flatMap((word) =>
    texts.filter((text) => new RegExp(`\\b${word}\\b`).test(text)),
  );
  expect(strays).toEqual([]);
});
