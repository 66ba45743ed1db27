import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { controlsOn } from './controls.ts';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

const heading = 'Start with what stands still';
const tourOf = (page: Page) => page.getByRole('region', { name: 'Tour' });
const step = (page: Page, number: number) =>
  expect(tourOf(page).getByText(`Step ${number} of 9`)).toBeVisible();

/** What the page is told to outline, and whether that is on the screen. */
const pointed = async (page: Page, place: string): Promise<void> => {
  await expect(page.locator('html')).toHaveAttribute('data-pointed', place);
  await expect(page.locator(`[data-point='${place}']`).first()).toBeInViewport();
};

test('the tour leads from an empty pad to a printed sheet by what is done', async ({ page }) => {
  const yard = yardPage(page);
  const tools = page.getByRole('toolbar', { name: 'Tools' });
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Take the tour, two minutes' }).click();
  await step(page, 1);
  await expect(page.getByRole('heading', { name: heading })).toBeHidden();
  await expect(tourOf(page).getByText('Step 1 of 9')).toBeFocused();
  await pointed(page, 'tool fence');
  await tools.getByRole('button', { name: 'Fence' }).click();
  await step(page, 2);
  await pointed(page, 'pad');
  await yard.pressAt(90, 120);
  await step(page, 3);
  await pointed(page, 'length');

  // what is typed goes where it is typed, whatever the tour says meanwhile
  const length = yard.entry.getByLabel('Length', { exact: true });
  await length.fill(`40'`);
  await expect(length).toBeFocused();
  await yard.entry.getByRole('button', { name: 'East, to the right' }).click();
  await step(page, 4);
  await pointed(page, 'finish');
  await yard.finish();
  await step(page, 5);
  await pointed(page, 'tool gate');

  // its place is kept
  await expect(page.locator('html')).toHaveAttribute('data-kept-all', 'true');
  await page.reload();
  await step(page, 5);
  await yard.take('Gate');
  await pointed(page, 'pad');
  await page.getByRole('button', { name: 'Show all' }).click();
  const drawn = await yard.saved();
  const [one, two] = Object.values(drawn.marks);
  if (one === undefined || two === undefined) throw new Error('expected two marks');
  await yard.pressGround((one.x + two.x) / 2, (one.y + two.y) / 2);
  await step(page, 6);

  await yard.onCard(async () => {
    await pointed(page, 'why opening');
    const why = page.getByRole('button', { name: 'Why the opening to hold' });
    await why.click();
    const reasons = page.getByRole('list', { name: 'the opening to hold' });
    await expect(reasons).toContainText('from inside face to inside face');
    await expect(reasons).toContainText('common practice, no published source');
    await step(page, 6);
    await why.click();
    await expect(reasons).toBeHidden();
    await step(page, 7);
    await pointed(page, 'flag');
    await page.getByRole('region', { name: 'Flags' }).getByRole('button').first().click();
    await step(page, 8);
    const down = page.getByRole('button', { name: 'Pull up' });
    if (await down.isVisible()) await down.click();
  });
  await pointed(page, 'hook');
  await page.getByRole('button', { name: 'Hook other end' }).click();
  await step(page, 9);
  await pointed(page, 'crew sheet');
  await yard.show('Crew sheet');
  await pointed(page, 'pdf');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  expect((await textsOf(file)).flat().join('\n')).toContain(`40'-0"`);
  await expect(tourOf(page).getByText('The tour is over')).toBeVisible();
  await expect(page.locator('html')).not.toHaveAttribute('data-pointed', /./);
  await tourOf(page).getByRole('button', { name: 'Done' }).click();
  await expect(tourOf(page)).toBeHidden();
  await expect(page.getByRole('button', { name: 'Help', exact: true })).toBeFocused();
});

test('the tour is left at any step and taken again, goes back, and what it drew is undone @tablet', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Take the tour, two minutes' }).click();
  const tour = tourOf(page);
  await yard.take('Fence');
  await step(page, 2);
  await tour.getByRole('button', { name: 'Back' }).click();
  // the tool is in hand: that step is done already
  await step(page, 2);
  await tour.getByRole('button', { name: 'Skip' }).click();
  await step(page, 3);
  await tour.getByRole('button', { name: 'Leave' }).click();
  await expect(tour).toBeHidden();
  await expect(page.locator('html')).not.toHaveAttribute('data-pointed', /./);

  await page.getByRole('button', { name: 'Help', exact: true }).click();
  await page.getByRole('button', { name: 'Take the tour' }).click();
  await step(page, 1);
  await yard.take('Fence');
  await yard.pressAt(90, 120);
  await yard.piece(`30'`, 'East, to the right');
  await yard.finish();
  await step(page, 5);
  await tour.getByRole('button', { name: 'Leave' }).click();
  expect(Object.keys((await yard.saved()).lines)).toHaveLength(1);
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect((await yard.saved()).marks).toEqual({});
});

const byKeys = 'the page of keys is opened, searched and closed by keys and gives the focus back';
test(byKeys, { tag: '@desk' }, async ({ page }) => {
  await page.goto('/');
  const list = page.getByRole('button', { name: 'List', exact: true });
  await list.focus();
  await page.keyboard.press('?');
  const sheet = page.getByRole('dialog', { name: 'Help: keys and gestures' });
  await expect(sheet).toBeVisible();
  await sheet.getByLabel('Find a key or a gesture').focus();
  await page.keyboard.type('crosshair');
  await expect(sheet.getByRole('status')).toHaveText('2 lines');
  await expect(sheet.getByText('Arrow keys', { exact: true })).toBeVisible();
  await expect(sheet.getByText('By touch')).toBeHidden();
  await page.keyboard.type(' ?');
  await expect(sheet.getByRole('status')).toHaveText('Nothing here has these words');
  await page.keyboard.press('Escape');
  await expect(sheet).toBeHidden();
  await expect(list).toBeFocused();

  // in a field a question mark is a letter
  await page.getByRole('button', { name: /^Job & file/ }).click();
  const name = page.getByLabel('Job name');
  await name.fill('');
  await name.press('?');
  await expect(name).toHaveValue('?');
  await expect(sheet).toBeHidden();
});

test('an empty pad offers what to do first, and makes way for it', async ({ page }, info) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  const first = page.getByRole('region', { name: heading });
  await expect(first.locator('button')).toHaveText([
    'Draw the house',
    'Draw a fence',
    'Take the tour, two minutes',
    'Look at a sample yard',
    'Open file',
    'Lot from a deed or plat',
  ]);
  for (const theme of ['day', 'dark', 'sun']) {
    await page.evaluate((light) => (document.documentElement.dataset['theme'] = light), theme);
    const { violations } = await new AxeBuilder({ page }).include('.first').analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  }
  if (info.project.name === 'phone') {
    const small = (await controlsOn(page)).filter((one) => Math.min(one.width, one.height) < 44);
    expect(small).toEqual([]);
  }
  await first.getByRole('button', { name: 'Draw a fence' }).click();
  await expect(first).toBeHidden();
  await yard.pressAt(150, 200);
  await yard.piece(`20'`, 'East, to the right');
  await yard.finish();
  await yard.take('Select');
  await expect(first).toBeHidden();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(first).toBeVisible();
});
