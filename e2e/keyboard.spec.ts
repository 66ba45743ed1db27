import { expect, test, type Page } from '@playwright/test';
import { layOutSite } from '../src/engine/layOutSite.ts';
import { keysOn } from './keys.ts';
import { popplerText } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

test('the keyboard alone draws a fence, drops a gate, moves it and takes it all back @desk', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Draw a fence' }).focus();
  await page.keyboard.press('Enter');
  await yard.pad.focus();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Space');
  for (const [length, arrow] of [
    ['40ft', 'ArrowRight'],
    ['30ft', 'ArrowDown'],
  ] as const) {
    await page.keyboard.press(`Shift+${arrow}`);
    await page.keyboard.type(length);
    await page.keyboard.press('Enter');
    await yard.pad.focus();
  }
  await page.keyboard.press('Enter');

  await yard.pad.focus();
  await page.keyboard.press('0');
  await page.keyboard.press('g');
  const astray = page.getByText('Point at the leg that the gate goes into');
  await expect(astray).toBeVisible();
  for (let press = 0; press < 40 && (await astray.isVisible()); press += 1) {
    await page.keyboard.press('ArrowUp');
  }
  await page.keyboard.press('Enter');
  const gated = await yard.saved();
  const legs = Object.values(layOutSite(gated).lines).flatMap((line) => line.legs);
  expect(legs.map(({ length }) => Math.round(length * 64) / 64)).toEqual([480, 360]);
  expect(Object.keys(gated.gates)).toHaveLength(1);
  expect(Object.values(layOutSite(gated).gates)[0]?.placed).toBe(true);

  await yard.pad.focus();
  while (await page.getByRole('button', { name: /^Undo/ }).isEnabled()) {
    await page.keyboard.press('Control+z');
  }
  const first = await yard.saved();
  expect(first.lines).toEqual({});
  expect(first.gates).toEqual({});
  expect(first.marks).toEqual({});
});

/** Signs the only opening off and prints the crew sheet, by keys; gives back what the PDF says. */
const signAndPrint = async (page: Page): Promise<string> => {
  const keys = keysOn(page);
  await keys.press(page.getByRole('link', { name: 'Openings', exact: true }), 'Shift+Tab');
  const sign = page.getByRole('group', { name: 'Sign-off' });
  await keys.fill(sign.getByLabel('Initials'), 'KB');
  await keys.fill(sign.getByLabel('Day'), '2 May');
  await keys.press(sign.getByRole('button', { name: 'Sign off' }));
  await expect(sign.getByText('Signed off by KB, 2 May')).toBeVisible();
  await keys.press(page.getByRole('link', { name: 'Crew sheet', exact: true }), 'Shift+Tab');
  const coming = page.waitForEvent('download');
  await keys.press(page.getByRole('button', { name: 'Download PDF' }));
  return popplerText(await (await coming).path());
};

test.describe('on a desk', { tag: '@desk' }, () => {
  test('a whole yard is drawn, checked and printed by keys alone', async ({ page }) => {
    const yard = yardPage(page);
    const keys = keysOn(page);
    await yard.openEmpty();
    await expect(yard.pad).toHaveAccessibleName('Drawing pad');
    await expect(yard.pad).toHaveAccessibleDescription(/R opens the yard as a list.*Tap what/s);
    await page.keyboard.press('f');
    await keys.goTo(yard.pad);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Space');
    await page.keyboard.type('40ft');
    await keys.fill(yard.entry.getByLabel('Direction (°)'), '90');
    await page.keyboard.press('Enter');
    await page.keyboard.type('30ft');
    await keys.fill(yard.entry.getByLabel('Direction (°)'), '180');
    await page.keyboard.press('Enter');
    await keys.press(yard.entry.getByRole('button', { name: 'Finish' }));
    await keys.goTo(yard.pad);
    await page.keyboard.press('0');
    await page.keyboard.press('g');
    const astray = page.locator('.prompt', { hasText: 'Point at the leg that the gate goes into' });
    await expect(astray).toBeVisible();
    for (let press = 0; press < 40 && (await astray.isVisible()); press += 1) {
      await page.keyboard.press('ArrowUp');
    }
    await page.keyboard.press('Enter');
    const text = await signAndPrint(page);
    expect(text).toContain(`40'-0"`);
    expect(text).toContain(`30'-0"`);
  });

  test('the list alone draws a yard, changes it, and prints it', async ({ page }) => {
    const yard = yardPage(page);
    const keys = keysOn(page);
    const list = page.getByRole('region', { name: 'List of the yard' });
    const heard = page.locator('.say');
    const what = list.getByLabel('What to draw');
    await yard.openEmpty();
    await page.keyboard.press('r');
    await expect(list.getByText('Nothing is drawn yet.')).toBeVisible();
    await expect(what).toBeFocused();

    await keys.choose(what, 'Building');
    await keys.press(list.getByRole('button', { name: 'Put it there' }));
    for (const [length, way] of [
      ['40ft', '90'],
      ['30ft', '180'],
      ['40ft', '270'],
    ] as const) {
      await expect(yard.entry.getByLabel('Length', { exact: true })).toBeFocused();
      await page.keyboard.type(length);
      await keys.fill(yard.entry.getByLabel('Direction (°)'), way);
      await page.keyboard.press('Enter');
    }
    await keys.press(yard.entry.getByRole('button', { name: 'Close to start' }));
    await expect(heard).toContainText(`Draw building. New: Building: 4 sides, 40'-0" east`);

    await keys.choose(what, 'Fence', 'Shift+Tab');
    await keys.choose(list.getByLabel('Where'), 'At a mark');
    await keys.choose(list.getByLabel('Mark', { exact: true }), 'Building corner 2');
    await keys.press(list.getByRole('button', { name: 'Put it there' }));
    for (const [length, way] of [
      ['50ft', '90'],
      ['30ft', '180'],
    ] as const) {
      await expect(yard.entry.getByLabel('Length', { exact: true })).toBeFocused();
      await page.keyboard.type(length);
      await keys.fill(yard.entry.getByLabel('Direction (°)'), way);
      await page.keyboard.press('Enter');
    }
    await keys.press(yard.entry.getByRole('button', { name: 'Finish' }));

    await keys.choose(what, 'Gate', 'Shift+Tab');
    await keys.fill(list.getByLabel('To the near post’s centre'), '12ft');
    await keys.press(list.getByRole('button', { name: 'Put the gate there' }));
    await expect(heard).toContainText('Place gate. New: Gate');
    await expect(heard).toContainText(`12'-0" from building corner 2`);

    // the second leg is split, the new mark is moved a foot, joined to nothing and taken out again
    await keys.choose(what, 'Nothing', 'Shift+Tab');
    const leg = list.getByRole('button', { name: /^Leg 2/ });
    await list.getByRole('button', { name: /^Fence line/ }).focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await expect(leg).toBeFocused();
    await page.keyboard.press('Enter');
    await expect(leg).toHaveAttribute('aria-pressed', 'true');
    await keys.press(list.locator('summary', { hasText: 'Put a mark into it' }), 'Shift+Tab');
    const split = list.getByRole('form', { name: 'Put a mark into it' });
    await keys.fill(split.getByLabel('How far'), '10ft');
    await page.keyboard.press('Enter');
    await expect(heard).toContainText('Add mark');
    await keys.press(list.locator('summary', { hasText: 'Move it' }), 'Shift+Tab');
    const move = list.getByRole('form', { name: 'Move it' });
    await keys.fill(move.getByLabel('How far'), '1ft');
    await keys.fill(move.getByLabel('Direction'), 'east');
    await page.keyboard.press('Enter');
    await expect(heard).toContainText('Move mark');
    await keys.press(list.getByRole('button', { name: 'Erase it' }), 'Shift+Tab');
    await expect(heard).toContainText('Gone');
    await page.keyboard.press('Control+z');
    await expect(heard).toContainText('Undone: Erase mark');
    await page.keyboard.press('Escape');
    await expect(list).toBeHidden();
    await expect(page.getByRole('button', { name: 'List', exact: true })).toBeFocused();
    const text = await signAndPrint(page);
    expect(text).toContain(`50'-0"`);
    const drawn = await yard.saved();
    expect(Object.values(drawn.gates)[0]?.anchor).toEqual({ from: 'start', offset: 144 });
    expect(Object.keys(Object.values(drawn.lines)[0]?.path ?? {})).toHaveLength(4);
  });
});
