import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { layOutSite } from '../src/engine/layOutSite.ts';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

test('a yard of chain link, boards and panels is drawn, changed, counted and printed, with a gate in the boards', async ({
  page,
}, info) => {
  const yard = yardPage(page);
  const look = (name: string) => page.screenshot({ path: info.outputPath(`${name}.png`) });
  await yard.openEmpty();
  await yard.take('Fence');
  await yard.onCard(() =>
    page.getByLabel('Built as').selectOption({ label: '6 ft boards on rails' }),
  );
  await yard.pressAt(60, 200);
  await yard.piece(`32'`, 'East, to the right');
  await yard.finish();
  await page.getByRole('button', { name: 'Show all' }).click();
  const [, corner] = Object.values((await yard.saved()).marks);
  if (corner === undefined) throw new Error('expected two marks');

  await yard.take('Fence');
  const next = page.getByRole('region', { name: 'Next fence' });
  await yard.onCard(async () => {
    await page.getByText('What the next one will be').click();
    await next.getByLabel('Built as').selectOption({ label: '6 ft chain link' });
  });
  await yard.pressGround(corner.x, corner.y);
  await yard.piece(`30'`, 'South, down');
  await yard.finish();
  await page.getByRole('button', { name: 'Show all' }).click();

  // the second line becomes panels: its build is changed, then the panel
  await yard.take('Select');
  await yard.pressGround(corner.x, corner.y - 180);
  await yard.onCard(async () => {
    await page.getByRole('button', { name: /^Whole line/ }).click();
    await page.getByLabel('Built as').selectOption({ label: '6 ft panels' });
    await page.getByText('Build', { exact: true }).click();
    const width = page.getByLabel('A panel is wide, face to face of posts');
    await width.fill('wide');
    await width.press('Enter');
    await expect(page.getByRole('alert')).toContainText('“wide”');
    await width.fill(`6'`);
    await width.press('Enter');
    await page.getByLabel('Where a whole panel does not fit').selectOption('all equal');
    await look('panels');
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations).toEqual([]);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect(page.getByLabel('Where a whole panel does not fit')).toHaveValue('cut');
    await page.getByRole('button', { name: /^Redo/ }).click();
  });

  await yard.take('Gate');
  await yard.pressGround(corner.x - 200, corner.y);
  await look('yard');
  const site = await yard.saved();
  const laid = layOutSite(site);
  expect(Object.values(laid.gates).map(({ placed }) => placed)).toEqual([true]);
  const kinds = Object.values(site.lines).map(({ spec }) => site.specs[spec]?.infill.kind);
  expect(kinds.toSorted()).toEqual(['boards', 'panels']);
  const flags = page.getByRole('region', { name: 'Flags' });
  await yard.onCard(() =>
    expect(flags.getByText(/hinges and latch have to be made/)).toBeVisible(),
  );

  await yard.show('Load list');
  const hung = page.getByRole('region', { name: 'Between the posts' });
  await expect(hung.getByRole('row', { name: /^Board/ })).toBeVisible();
  // 360 less half of 3 1/2 and of 2 1/2 is 357 clear: five panels of 72 with posts of 2 1/2
  await expect(hung.getByRole('row', { name: /^Panel/ })).toContainText('5');
  await expect(page.getByRole('region', { name: /to be cut, one a bay/ })).toBeVisible();
  await look('load');

  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  const words = (await textsOf(file)).flat().join(' ');
  for (const said of ['fence of boards on rails', 'fence of panels', 'Rail of boards', 'Panel']) {
    expect(words).toContain(said);
  }
  expect(words).not.toContain('Tension band');
});
