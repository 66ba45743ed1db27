import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { layOutSite } from '../src/engine/layOutSite.ts';
import { openSite } from '../src/site/openSite.ts';
import { yardPage } from './yardPage.ts';

const sample = (): string =>
  readFileSync(new URL('../sample-sites/back-yard.site.json', import.meta.url), 'utf8');

const openText = async (page: Page, name: string, text: string): Promise<void> => {
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page
    .getByLabel('Site file to open')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  // the sheet puts itself away when the file is read, whether it opened or not
  await expect(page.getByRole('dialog')).toBeHidden();
};

/** Files that are not what they should be, and what the one line about each must name. */
const bad: readonly (readonly [name: string, text: string, says: RegExp])[] = [
  ['truncated.json', sample().slice(0, 700), /truncated\.json: .+/],
  ['foreign.json', '{"kind":"drawing","shapes":[]}', /foreign\.json: .+format/],
  ['hostile.json', '{"__proto__":{"format":"lathline site"},"version":1}', /hostile\.json: .+/],
  [
    'newer.json',
    sample().replace(/"version": \d+/, '"version": 70'),
    /newer\.json: .+version 70.+/,
  ],
  ['words.json', 'not a drawing', /words\.json: .+/],
];

test('a bad file gets one clear line and the drawing stays @desk', async ({ page }) => {
  const yard = yardPage(page);
  await page.goto('/');
  const before = await yard.saved();
  for (const [name, text, says] of bad) {
    await openText(page, name, text);
    const line = page.getByRole('status').filter({ hasText: name });
    await expect(line).toHaveText(says);
    // the line itself, and the key that puts it away
    expect((await line.innerText()).split('\n')).toEqual([expect.stringContaining(name), 'OK']);
    expect(await yard.saved()).toEqual(before);
  }
});

test('what was drawn is there after the page is closed, and opening a file can be undone @phone', async ({
  page,
  context,
}) => {
  const yard = yardPage(page);
  await page.goto('/');
  const drawn = await yard.saved();
  const court = new URL('../sample-sites/sports-court.site.json', import.meta.url);
  await openText(page, 'court.json', readFileSync(court, 'utf8'));
  await expect.poll(async () => (await yard.saved()).job.name).toContain('court');
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect(await yard.saved()).toEqual(drawn);
  await page.getByRole('button', { name: /^Redo/ }).click();
  const opened = await yard.saved();
  await page.close();
  const later = await context.newPage();
  await later.goto('/index.html');
  expect(await yardPage(later).saved()).toEqual(opened);
});

test('a gate dragged along the tape takes its posts with it', async ({ page }, info) => {
  const yard = yardPage(page);
  await page.goto('/');
  if (info.project.name === 'phone')
    await page.getByRole('button', { name: 'Pull out tape' }).click();
  const before = layOutSite(await yard.saved());
  const gate = page.getByRole('button', { name: /^Walk gate: select/ });
  const box = await gate.boundingBox();
  if (box === null) throw new Error('the gate is not on the tape');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 12, y, { steps: 4 });
  await page.mouse.up();
  const after = layOutSite(await yard.saved());
  const middles = [before, after].map(({ gates }) => gates['gate:walk']?.middle);
  expect(middles[1]).not.toEqual(middles[0]);
  expect(after.gates['gate:walk']?.opening.target).toBe(before.gates['gate:walk']?.opening.target);
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect(layOutSite(await yard.saved()).gates).toEqual(before.gates);
});

test('a screen that cannot be shown loses nothing: the file can be saved @tablet', async ({
  page,
}) => {
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => {
      throw new Error('no canvas on this device');
    };
  });
  await page.goto('/?sample=back-yard');
  await expect(page.getByRole('alert')).toContainText('no canvas on this device');
  const coming = page.waitForEvent('download');
  await page.getByRole('alert').getByRole('button', { name: 'Save file' }).click();
  const saved = openSite(readFileSync(await (await coming).path(), 'utf8'));
  expect(saved.ok && Object.keys(saved.value.gates)).toEqual(['gate:drive', 'gate:walk']);
  await page.getByRole('link', { name: 'Load list' }).click();
  await expect(page.getByRole('heading', { name: 'Load list', level: 1 })).toBeAttached();
  await expect(page.getByRole('alert')).toBeHidden();
});
