import { expect, type Page } from '@playwright/test';

/** A state of the program that is looked at: how one comes to it from the sample yard, and what shows it. */
export interface State {
  readonly name: string;
  readonly screen: 'Yard' | 'Openings' | 'Load list' | 'Crew sheet';
  /** The row of the list that is selected, on the yard; its card is then pulled up. */
  readonly row?: RegExp;
  /** A key that opens a dialog. */
  readonly key?: RegExp;
  /** The tool that is taken up. */
  readonly tool?: string;
  readonly list?: true;
  /** What is begun from the list, so that its first piece is typed. */
  readonly draws?: string;
  /** Reasons of figures that are opened, by the names of their keys. */
  readonly asks?: RegExp;
  /** Where the tour is, by what it says of that. */
  readonly tour?: string;
}

const yard = { screen: 'Yard' } as const;

const cards: readonly State[] = [
  { name: 'card of a fence line', ...yard, row: /of (open|closed) fence/ },
  { name: 'card of a leg', ...yard, row: /^Leg 1/ },
  { name: 'card of a gate', ...yard, row: /^Gate / },
  { name: 'card of a post', ...yard, row: /line post/ },
  { name: 'card of a building', ...yard, row: /^Building/ },
  { name: 'card of a mark', ...yard, row: /corner 1: / },
  { name: 'reasons of a gate', ...yard, row: /^Gate /, asks: /^Why / },
  { name: 'reasons of a post', ...yard, row: /line post/, asks: /^Why / },
];

const dialogs: readonly State[] = [
  { name: 'job and file', ...yard, key: /^Job & file/ },
  { name: 'keys and gestures', ...yard, key: /^Help/ },
  { name: 'tapes', ...yard, key: /^Tapes/ },
  { name: 'square a corner', ...yard, key: /^Square a corner/ },
  { name: 'lot from a deed', ...yard, key: /^Lot from a deed/ },
  { name: 'level notes', ...yard, tool: 'Grade shot', key: /^Level notes/ },
  { name: 'hardware book', ...yard, screen: 'Openings', key: /^Hardware book/ },
  { name: 'book of town rules', ...yard, screen: 'Openings', key: /^Book of town rules/ },
];

const tools: readonly State[] = [
  'Fence',
  'Gate',
  'Tape',
  'Boundary',
  'Sight triangle',
  'Utility',
  'Grade shot',
  'Picture',
].map((tool) => ({ name: `tool ${tool}`, ...yard, tool }));

/** Every screen, the cards of the yard, its tools and its dialogs. */
export const states: readonly State[] = [
  { name: 'the yard', ...yard },
  { name: 'the list', ...yard, list: true },
  { name: 'a piece that is typed in the list', ...yard, list: true, draws: 'fence' },
  { name: 'a gate in the list', ...yard, list: true, draws: 'gate' },
  ...cards,
  ...tools,
  ...dialogs,
  { name: 'the tour', ...yard, tour: 'Step 1 of 9' },
  { name: 'the tour at the flags', ...yard, tour: 'Step 7 of 9' },
  { name: 'the end of the tour', ...yard, tour: 'The tour is over' },
  { name: 'openings', ...yard, screen: 'Openings' },
  { name: 'reasons of an opening', ...yard, screen: 'Openings', asks: /^Why the (opening|clear)/ },
  { name: 'load list', ...yard, screen: 'Load list' },
  { name: 'crew sheet', ...yard, screen: 'Crew sheet' },
];

/** Cards that the sample yard has nothing for: states of the yard of `richYard.ts`. */
export const richStates: readonly State[] = [
  { name: 'card of a tape', ...yard, row: /^Tape / },
  { name: 'card of a shot', ...yard, row: /drain: height/i },
  { name: 'card of kept-clear ground', ...yard, row: /^Ground kept clear/ },
  { name: 'card of a held post', ...yard, row: /^Held post/ },
  { name: 'card of a picture', ...yard, row: /^Picture plat/ },
  { name: 'tapes of a taped yard', ...yard, key: /^Tapes/ },
  { name: 'openings of a taped yard', ...yard, screen: 'Openings' },
];

/** Opens every reason that is to be seen and goes by such a name. */
const ask = async (page: Page, name: RegExp): Promise<void> => {
  const keys = page.getByRole('button', { name, expanded: false });
  while (await keys.first().isVisible()) await keys.first().click();
};

/** Begins the tour and skips to where it says so. */
const begin = async (page: Page, at: string): Promise<void> => {
  await page.getByRole('button', { name: 'Help', exact: true }).click();
  await page.getByRole('button', { name: 'Take the tour' }).click();
  const tour = page.getByRole('region', { name: 'Tour' });
  await expect(tour).toBeVisible();
  while (!(await tour.getByText(at).isVisible()))
    await tour.getByRole('button', { name: 'Skip' }).click();
};

/** Brings the program from its first page to a state. */
export const comeTo = async (page: Page, state: State): Promise<void> => {
  const { screen, row, key, tool, list, draws, asks, tour } = state;
  await page.getByRole('link', { name: screen, exact: true }).click();
  await expect(page.locator('main')).toBeVisible();
  if (screen === 'Crew sheet')
    await expect(page.getByRole('img').first()).toBeVisible({ timeout: 60_000 });
  if (screen !== 'Yard') {
    if (key !== undefined) await page.getByRole('button', { name: key }).first().click();
    if (asks !== undefined) await ask(page, asks);
    return;
  }
  if (tour !== undefined) await begin(page, tour);
  const pull = page.getByRole('button', { name: /^Pull up/ });
  if (tool !== undefined) {
    await page
      .getByRole('toolbar', { name: 'Tools' })
      .getByRole('button', { name: tool, exact: false })
      .first()
      .click();
  }
  if (list === true || row !== undefined) {
    await page.getByRole('button', { name: 'List', exact: true }).click();
  }
  const region = page.getByRole('region', { name: 'List of the yard' });
  if (draws !== undefined) {
    await region.getByLabel('What to draw').selectOption(draws);
    const put = region.getByRole('button', { name: 'Put it there' });
    if (await put.isVisible()) await put.click();
  }
  if (row !== undefined) {
    await region.locator('details').evaluateAll((all) => {
      for (const one of all) one.setAttribute('open', '');
    });
    await region.getByRole('button', { name: row }).first().click();
    await region.getByRole('button', { name: 'Close list' }).click();
    if (await pull.isVisible()) await pull.click();
    await page.locator('.card details').evaluateAll((all) => {
      for (const one of all) one.setAttribute('open', '');
    });
    if (asks !== undefined) await ask(page, asks);
  } else if (list !== true && (await pull.isVisible())) await pull.click();
  if (key !== undefined) await page.getByRole('button', { name: key }).first().click();
};

/** Goes back to the yard with nothing in hand, selected or open. */
export const goBack = async (page: Page): Promise<void> => {
  const done = page.locator('dialog[open]').getByRole('button', { name: 'Done', exact: true });
  if (await done.isVisible()) await done.click();
  if (await page.locator('.yardlist .typed input').first().isVisible())
    await page.keyboard.press('Escape');
  const tour = page.getByRole('region', { name: 'Tour' });
  if (await tour.isVisible()) await tour.getByRole('button', { name: /^(Leave|Done)$/ }).click();
  const down = page.getByRole('button', { name: 'Put down' });
  if (await down.isVisible()) await down.click();
  const close = page.getByRole('button', { name: 'Close list' });
  if (await close.isVisible()) await close.click();
  const letGo = page.getByRole('button', { name: 'Let go' });
  if (await letGo.isVisible()) await letGo.click();
  const select = page.getByRole('toolbar', { name: 'Tools' });
  if (await select.isVisible()) await select.getByRole('button', { name: /^Select/ }).click();
};
