import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import type { Site } from '../src/site/site.ts';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

/** The north-east corner of the lot of the sample, whose cut corner of fence lies inside of it. */
const corner = { x: 1080, y: 1320 };

const trianglesOf = ({ features }: Site) =>
  Object.values(features).flatMap((one) =>
    one.kind === 'height zone' && one.label === '' ? [one] : [],
  );

test('a sight triangle from a corner flags the fence in it until its limit lets it stand, and is printed', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=corner-lot');
  await yard.take('Select');
  await yard.pressGround(corner.x, corner.y);
  const pull = page.getByRole('button', { name: /^Pull up/ });
  if (await pull.isVisible()) await pull.click();
  const flag = page
    .getByRole('region', { name: 'Flags' })
    .getByRole('listitem')
    .filter({ hasText: 'passes through the sight triangle for' });

  const keys = page.getByRole('region', { name: 'Sight triangle' });
  await keys.getByLabel('Legs of a sight triangle').fill('no');
  await keys.getByLabel('Legs of a sight triangle').press('Enter');
  await expect(keys.getByRole('alert')).toContainText('Legs of a sight triangle');
  // the side along the street to the south is 100 ft long
  await keys.getByLabel('Legs of a sight triangle').fill('120');
  await keys.getByLabel('Legs of a sight triangle').press('Enter');
  await expect(keys).toContainText(`90'-0" long: the triangle ends there.`);
  await keys.getByLabel('Legs of a sight triangle').fill('25');
  await keys.getByLabel('Legs of a sight triangle').press('Enter');
  await expect(keys).not.toContainText('the triangle ends there');
  await expect(flag).toHaveCount(0);
  await keys.getByRole('button', { name: 'Sight triangle here' }).click();

  const card = page.getByRole('region', { name: 'Sight triangle' });
  await expect(card.getByLabel('Highest, open fence')).toHaveValue(`2'-6"`);
  // 4 ft of fabric and 2 in under it
  await expect(flag).toContainText(/up to 4'-2" over the ground .* no higher than 2'-6" there/);

  await card.getByLabel('Highest, open fence').fill('50');
  await card.getByLabel('Highest, open fence').press('Enter');
  await expect(flag).toHaveCount(0);
  await card.getByLabel('Highest, open fence').fill('49');
  await card.getByLabel('Highest, open fence').press('Enter');
  await expect(flag).toContainText(`no higher than 4'-1" there (as it was typed`);
  await page.getByText('What is published: height in a sight triangle').click();
  await page.getByRole('button', { name: /Zanesville OH/ }).click();
  await expect(flag).toContainText(`no higher than 3'-6" there (Zanesville OH`);

  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);

  const undo = page.getByRole('button', { name: /^Undo/ });
  for (let n = 0; n < 3; n += 1) await undo.click();
  await expect(flag).toContainText(`no higher than 2'-6" there`);
  await undo.click();
  await expect(flag).toHaveCount(0);
  await page.getByRole('button', { name: /^Redo/ }).click();
  await expect(flag).toHaveCount(1);
  const put = page.getByRole('button', { name: 'Put down' });
  if (await put.isVisible()) await put.click();
  const [triangle] = trianglesOf(await yard.saved());
  expect(triangle).toMatchObject({ of: 'sight triangle', solid: 30, open: 30 });

  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  const pages = await textsOf(file);
  const words = pages.flat().join(' ');
  expect(words).toContain('sight triangle: fence no higher than written');
  expect(words.match(/no higher than 2'-6"/g)?.length).toBeGreaterThan(2);
  expect(words).toContain('UP TO 2\'-6" HIGH');
});

test('a front yard is drawn corner by corner with the limits that are planned', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await yard.take('Front yard');
  await yard.onCard(async () => {
    const next = page.getByRole('region', { name: 'Next front yard' });
    await expect(next).toContainText('common practice, no published source');
    await next.getByLabel('Highest, open fence').fill(`3'`);
    await next.getByLabel('Highest, open fence').press('Enter');
  });
  await yard.pressAt(120, 260);
  await yard.piece(`40'`, 'East, to the right');
  await yard.piece(`20'`, 'North, up');
  await yard.close();
  const [yardZone] = trianglesOf(await yard.saved());
  expect(yardZone).toMatchObject({ of: 'front yard', solid: 48, open: 36 });
});
