import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { distance } from '../src/geometry/distance.ts';
import { pictureHeader } from '../src/importers/picture/pictureHeader.ts';
import type { Picture } from '../src/site/picture.ts';
import type { Site } from '../src/site/site.ts';
import type { Underlay } from '../src/site/underlay.ts';
import { dragGround } from './dragGround.ts';
import { bombFile, dropFile, photoFile, pdfFile, pngFile } from './pictureFiles.ts';
import { begin, bring, card, first, inkAt, mapOf } from './underlayPage.ts';
import { yardPage } from './yardPage.ts';

/** A picture of white ground with a black house on it, 300 by 200 px from 200, 150; made for this test. */
const house = pngFile('house.png', [800, 600], (x, y) =>
  x >= 200 && x < 500 && y >= 150 && y < 350 ? [20, 20, 20] : [235, 240, 230],
);

test('a photo is sized by two points and a distance, faded, locked, undone, kept and removed @tablet', async ({
  page,
  context,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await bring(page, house);
  const laid = await yard.saved();
  expect(first(laid)).toMatchObject({ width: 800, height: 600, size: 'guessed', label: 'house' });
  expect(Object.keys(laid.pictures)).toEqual([first(laid).picture]);
  const seen = mapOf(laid);
  const middle = seen.toSite({ x: 350, y: 250 });
  await expect.poll(() => inkAt(page, middle)).toEqual([20, 20, 20]);

  await begin(page, /^Two points, a known/);
  const [west, east] = [seen.toSite({ x: 200, y: 350 }), seen.toSite({ x: 500, y: 350 })];
  await yard.pressGround(west.x, west.y);
  await yard.pressGround(east.x, east.y);
  const form = page.getByRole('form', { name: 'Distance on the picture' });
  await form.getByLabel('From point 1 to point 2').fill(`30'`);
  await form.getByRole('button', { name: 'Set', exact: true }).click();
  const sized = await yard.saved();
  expect(first(sized).size).toBe('told');
  const { toSite } = mapOf(sized);
  const wide = distance(toSite({ x: 200, y: 350 }), toSite({ x: 500, y: 350 }));
  // a tap is good to a pixel of the screen
  expect(Math.abs(wide - 360)).toBeLessThan(360 * 0.02);

  await yard.onCard(async () => {
    const slider = card(page).getByRole('slider', { name: /^Shows/ });
    await slider.focus();
    for (let n = 0; n < 10; n += 1) await page.keyboard.press('ArrowLeft');
    await expect(card(page).getByText('Shows: 50 %')).toBeVisible();
    await card(page).getByLabel('Locked').check();
  });
  const faded = await yard.saved();
  expect(first(faded)).toMatchObject({ shows: 0.5, locked: true });
  const [dark = 0] = await inkAt(page, toSite({ x: 350, y: 250 }));
  expect(dark).toBeGreaterThan(100);

  // a locked picture lets the hand draw over it
  await yard.take('Building');
  const corner = toSite({ x: 200, y: 150 });
  await yard.pressGround(corner.x, corner.y);
  await yard.piece(`30'`, 'East, to the right');
  await yard.piece(`20'`, 'South, down');
  await yard.piece(`30'`, 'West, to the left');
  await yard.close();
  const drawn = await yard.saved();
  expect(Object.keys(drawn.features)).toHaveLength(1);
  expect(drawn.underlays).toEqual(faded.underlays);
  await yard.take('Select');
  await dragGround(page, toSite({ x: 700, y: 550 }), toSite({ x: 600, y: 450 }));
  expect((await yard.saved()).underlays).toEqual(faded.underlays);

  await page.close();
  const later = await context.newPage();
  const again = yardPage(later);
  await later.goto('/index.html');
  expect(await again.saved()).toEqual(drawn);
  // half faded as before
  const shade = async () => (await inkAt(later, toSite({ x: 350, y: 250 })))[0] ?? 0;
  await expect.poll(async () => Math.abs((await shade()) - dark)).toBeLessThan(20);

  await again.take('Picture');
  await again.onCard(async () => {
    await later.getByRole('button', { name: 'house (locked)' }).click();
    await card(later).getByRole('button', { name: 'Remove picture' }).click();
  });
  const bare = await again.saved();
  expect([bare.underlays, bare.pictures]).toEqual([{}, {}]);
  await later.getByRole('button', { name: /^Undo/ }).click();
  expect(await again.saved()).toEqual(drawn);
});

test('a picture is dragged, turned by its knob and straightened by a rectangle and by four marks @tablet', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await bring(page, house);
  const laid = await yard.saved();
  const seen = mapOf(laid);
  const at = (x: number, y: number) => seen.toSite({ x, y });
  await dragGround(page, at(600, 500), at(640, 460));
  const moved = await yard.saved();
  const by = distance(mapOf(moved).toSite({ x: 0, y: 0 }), at(0, 0));
  expect(by).toBeGreaterThan(distance(at(600, 500), at(640, 460)) * 0.8);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await dragGround(page, at(400, 0), at(700, 100));
  const turned = await yard.saved();
  const up = mapOf(turned).toSite({ x: 400, y: 0 });
  expect(Math.abs(up.x - at(400, 0).x)).toBeGreaterThan(distance(at(0, 0), at(100, 0)));
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect(await yard.saved()).toEqual(laid);

  // the house as it is, said to be 30 ft by 15 ft: the picture is drawn out to that
  await begin(page, /^Corners of a rect/);
  const corners = [at(200, 150), at(500, 150), at(500, 350), at(200, 350)];
  for (const { x, y } of corners) await yard.pressGround(x, y);
  const form = page.getByRole('form', { name: 'Sides of the rectangle' });
  await form.getByLabel('From corner 1 to corner 2').fill(`30'`);
  await form.getByRole('button', { name: 'Set', exact: true }).click();
  await form.getByLabel('From corner 2 to corner 3').fill(`15'`);
  await form.getByRole('button', { name: 'Set', exact: true }).click();
  const straight = await yard.saved();
  expect(Object.keys(first(straight).ties)).toHaveLength(4);
  const map = mapOf(straight);
  const sides = [
    distance(map.toSite({ x: 200, y: 150 }), map.toSite({ x: 500, y: 150 })),
    distance(map.toSite({ x: 500, y: 150 }), map.toSite({ x: 500, y: 350 })),
  ];
  sides.forEach((side, n) => {
    const wanted = [360, 180][n] ?? 0;
    expect(Math.abs(side - wanted)).toBeLessThan(wanted * 0.03);
  });
  const middle = map.toSite({ x: 350, y: 250 });
  await expect.poll(() => inkAt(page, middle), { timeout: 20_000 }).toEqual([20, 20, 20]);
  // dragged as a whole it stays straight, and is not straightened again
  await dragGround(page, middle, { x: middle.x + 60, y: middle.y - 30 });
  await expect
    .poll(async () => inkAt(page, mapOf(await yard.saved()).toSite({ x: 350, y: 250 })))
    .toEqual([20, 20, 20]);
});

test('a picture is sized by the keys alone, on a metric yard @desk', async ({ page }) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByLabel('Written in').selectOption('m');
  await page.getByRole('button', { name: 'Done' }).click();
  await bring(page, house);
  const laid = mapOf(await yard.saved());
  await begin(page, /^Two points, a known/);
  // the crosshair goes from line to line of the graph paper, from the middle of the pad
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Space');
  for (let n = 0; n < 3; n += 1) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Space');
  const form = page.getByRole('form', { name: 'Distance on the picture' });
  await expect(form).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(form).toBeHidden();
  await begin(page, /^Two points, a known/);
  const points = page.getByRole('group', { name: 'Points on the picture' });
  await expect(points).toContainText('0 of 2 set');
  await page.getByRole('application').focus();
  await page.keyboard.press('Space');
  await expect(points).toContainText('1 of 2 set');
  await page.keyboard.press('Backspace');
  await expect(points).toContainText('0 of 2 set');
  await page.keyboard.press('Space');
  for (let n = 0; n < 3; n += 1) await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Enter');
  await form.getByLabel('From point 1 to point 2').fill('7.5');
  await form.getByLabel('From point 1 to point 2').press('Enter');
  await expect(form).toBeHidden();
  const site = await yard.saved();
  expect(first(site).size).toBe('told');
  const [a, b] = [0, 800].map((x) => mapOf(site).toSite({ x, y: 0 }));
  const [c, d] = [0, 800].map((x) => laid.toSite({ x, y: 0 }));
  if (!a || !b || !c || !d) throw new Error('expected the corners');
  // three squares of the paper were 7.5 m: so much larger or smaller is all of it
  expect(distance(a, b)).not.toBeCloseTo(distance(c, d), 3);
  await yard.onCard(async () => {
    const width = card(page).getByLabel('All of it is so wide');
    await width.fill('20 m');
    await width.press('Enter');
    const up = card(page).getByLabel('Up on it, ° from north');
    await up.fill('90');
    await up.press('Enter');
  });
  const turned = mapOf(await yard.saved());
  const [left, right] = [turned.toSite({ x: 0, y: 0 }), turned.toSite({ x: 800, y: 0 })];
  expect(distance(left, right)).toBeCloseTo(20 / 0.0254, 6);
  // up is east, so its right is south
  expect(right.x).toBeCloseTo(left.x, 6);
  expect(right.y).toBeLessThan(left.y);
});

test('axe finds nothing on the card of a picture or on the sheet of pages, in any light @desk-phone', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await bring(page, house);
  for (const light of ['Day', 'Dark', 'Full sun']) {
    await page.getByRole('button', { name: 'Job & file' }).click();
    await page.getByRole('button', { name: light, exact: true }).click();
    await page.getByRole('button', { name: 'Done' }).click();
    await begin(page, /^Corners of a rect/);
    const onPad = await new AxeBuilder({ page }).analyze();
    expect(onPad.violations.map(({ id, nodes }) => [light, id, nodes[0]?.html])).toEqual([]);
    await page.getByRole('button', { name: 'Drop them all' }).click();
    await yard.onCard(async () => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => [light, id, nodes[0]?.html])).toEqual([]);
    });
    await dropFile(page, pdfFile('sheets.pdf', ['Sheet 1', 'Sheet 2']));
    const sheet = page.getByRole('dialog', { name: 'Which page?' });
    await expect(sheet.getByRole('img', { name: 'Page 1' })).toBeVisible();
    const onSheet = await new AxeBuilder({ page }).analyze();
    expect(onSheet.violations.map(({ id, nodes }) => [light, id, nodes[0]?.html])).toEqual([]);
    await sheet.getByRole('button', { name: 'Done' }).click();
  }
});

test('what cannot come under the drawing gets one clear line, and the pad still answers @desk', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/');
  const before = await yard.saved();
  const say = page.getByRole('status').filter({ hasText: 'the drawing is as it was' });
  await dropFile(page, bombFile('bomb.png', 60_000, 60_000));
  await expect(say).toContainText(
    'bomb.png: expected at most 100 megapixels, found 60000 × 60000 (3,600 megapixels)',
  );
  const cut = { ...house, name: 'cut.png', buffer: house.buffer.subarray(0, 20) };
  await dropFile(page, cut);
  await expect(say).toContainText('cut.png: the picture is cut off or damaged');
  const torn = Buffer.concat([house.buffer.subarray(0, 60), Buffer.alloc(400, 7)]);
  await dropFile(page, { ...house, name: 'torn.png', buffer: torn });
  await expect(say).toContainText('torn.png: the picture is damaged or cut off');
  await dropFile(page, { name: 'a.heic', mimeType: 'image/heic', buffer: Buffer.from('ftypheic') });
  await expect(say).toContainText('a.heic: expected a JPEG, PNG or WebP picture');

  const plat = pdfFile('plat.pdf', ['Lot 1']);
  await dropFile(page, { ...plat, name: 'bad.pdf', buffer: plat.buffer.subarray(0, 90) });
  const sheet = page.getByRole('dialog', { name: 'Which page?' });
  await expect(sheet.getByRole('alert')).toContainText(/bad\.pdf: the PDF is damaged/);
  await sheet.getByRole('button', { name: 'Done' }).click();
  expect(await yard.saved()).toEqual(before);
  const view = await yard.pad.getAttribute('data-view');
  await page.getByRole('button', { name: 'Larger' }).click();
  await expect.poll(() => yard.pad.getAttribute('data-view')).not.toBe(view);
});

test('a page of a PDF comes under the drawing: the only one at once, of several the one chosen @desk', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await dropFile(page, pdfFile('lot.pdf', ['Lot 7']));
  await expect(page.getByText('lot.pdf: under the drawing')).toBeVisible();
  const one = await yard.saved();
  expect(first(one)).toMatchObject({ label: 'lot', width: 3165, height: 4096 });
  expect(first(one).picture).toMatch(/-p1$/);
  // the red square stands from 100 pt to 300 pt of 792, from below
  const px = 4096 / 792;
  const square = mapOf(one).toSite({ x: 200 * px, y: (792 - 200) * px });
  await expect.poll(() => inkAt(page, square)).toEqual([255, 0, 0]);

  await dropFile(page, pdfFile('sheets.pdf', ['Sheet 1', 'Sheet 2', 'Sheet 3']));
  const sheet = page.getByRole('dialog', { name: 'Which page?' });
  await sheet.getByRole('button', { name: 'Next page' }).click();
  await expect(sheet.getByRole('img', { name: 'Page 2' })).toBeVisible();
  await sheet.getByLabel('Page, 1 to 3').fill('9');
  await sheet.getByLabel('Page, 1 to 3').press('Enter');
  await expect(sheet.getByRole('alert')).toContainText('expected a whole number from 1 to 3');
  await sheet.getByLabel('Page, 1 to 3').fill('3');
  await sheet.getByLabel('Page, 1 to 3').press('Enter');
  await sheet.getByRole('button', { name: 'Put page 3 under the drawing' }).click();
  await expect(page.getByText('sheets.pdf: under the drawing')).toBeVisible();
  const labels = Object.values<Underlay>((await yard.saved()).underlays).map(({ label }) => label);
  expect(labels).toEqual(['lot', 'sheets, page 3']);
});

test('a picture kept beside the file is asked for where it is not, and taken back by its bytes @desk', async ({
  page,
  browser,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await bring(page, house);
  await yard.onCard(() =>
    card(page).getByRole('button', { name: 'Beside it, on this device' }).click(),
  );
  await expect.poll(async () => Object.keys((await yard.saved()).pictures)).toEqual([]);
  await page.getByRole('button', { name: 'Job & file' }).click();
  const path = await yard.download(() => page.getByRole('button', { name: 'Save file' }).click());
  await page.getByRole('button', { name: 'Done' }).click();
  await expect(page.getByText('1 picture is kept on this device and is not in it')).toBeVisible();
  await page.reload();
  const middle = mapOf(await yard.saved()).toSite({ x: 350, y: 250 });
  await expect.poll(() => inkAt(page, middle)).toEqual([20, 20, 20]);

  const other = await browser.newContext({ viewport: page.viewportSize() });
  const there = await other.newPage();
  const far = yardPage(there);
  await there.goto('/index.html');
  await there.getByRole('button', { name: 'Job & file' }).click();
  await there.getByLabel('Site file to open').setInputFiles(path);
  await expect(there.getByRole('dialog')).toBeHidden();
  await there.getByRole('button', { name: 'Show all' }).click();
  expect(await inkAt(there, middle)).not.toEqual([20, 20, 20]);
  await far.take('Picture');
  await far.onCard(async () => {
    await there.getByRole('button', { name: 'house', exact: true }).click();
    await expect(card(there)).toContainText('house.png is not on this device.');
  });
  // under another name, but the same bytes
  await dropFile(there, { ...house, name: 'copy of house.png' });
  await expect(there.getByText('copy of house.png: back under the drawing')).toBeVisible();
  await expect.poll(() => inkAt(there, middle)).toEqual([20, 20, 20]);
  const opened = await far.saved();
  const told = JSON.parse(readFileSync(path, 'utf8')) as Site;
  expect(opened.underlays).toEqual(told.underlays);
  await other.close();
});

test('a WebP comes as it is, and a photo that is reduced loses what its camera wrote in it @phone', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  const webp = { name: 'a.webp', width: 1200, height: 700, type: 'image/webp' } as const;
  const plain = await photoFile(page, webp);
  await bring(page, plain);
  const site = await yard.saved();
  expect(first(site)).toMatchObject({ width: 1200, height: 700 });
  const [kept] = Object.values<Picture>(site.pictures);
  expect(kept?.type).toBe('image/webp');
  expect(Buffer.from(kept?.data ?? '', 'base64').equals(plain.buffer)).toBe(true);
  await page.getByRole('button', { name: /^Undo/ }).click();
  const told = { name: 'b.jpg', width: 5000, height: 2500, orientation: 8 };
  const photo = await photoFile(page, told);
  expect(photo.buffer.includes('Exif')).toBe(true);
  await bring(page, photo);
  const other = await yard.saved();
  expect(first(other)).toMatchObject({ width: 2500, height: 5000 });
  const [reduced] = Object.values<Picture>(other.pictures);
  const bytes = Buffer.from(reduced?.data ?? '', 'base64');
  expect(bytes.includes('Exif')).toBe(false);
  expect(pictureHeader(new Uint8Array(bytes))).toEqual({
    ok: true,
    value: { type: 'image/jpeg', width: 2048, height: 4096, notes: false },
  });
});
