import { writeFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { dropFile, pdfFile, photoFile } from './pictureFiles.ts';
import { bring, first, inkAt, mapOf } from './underlayPage.ts';
import { watchBlocks } from './watchBlocks.ts';
import { yardPage } from './yardPage.ts';

/** A pad that froze would not answer for as long as the work takes, on any machine. */
const shareOf = (took: number): number => took / 10;

test('a 40-megapixel photo, turned by its camera, does not freeze the pad', async ({
  page,
}, info) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  const size = { name: 'big.jpg', width: 7728, height: 5368 };
  const photo = await photoFile(page, { ...size, orientation: 6 });
  // from the disk, as a person chooses it: else the test's own hands hold up the page
  const path = info.outputPath(photo.name);
  writeFileSync(path, photo.buffer);
  await page.reload();
  await yard.take('Picture');
  const longest = await watchBlocks(page);
  await page.getByLabel('Picture or PDF to put under the drawing').setInputFiles(path);
  const before = await yard.pad.getAttribute('data-view');
  const started = Date.now();
  await yard.pad.hover();
  await page.mouse.wheel(0, -200);
  await expect.poll(() => yard.pad.getAttribute('data-view')).not.toBe(before);
  const answered = Date.now() - started;
  await expect(page.getByText('big.jpg: under the drawing')).toBeVisible({ timeout: 60_000 });
  const took = Date.now() - started;
  const block = await longest();
  const site = await yard.saved();
  expect([first(site).width, first(site).height]).toEqual([5368, 7728]);
  // it stands upright: the sky is at the left of what was taken, at the right when it is turned
  const [sky, ground] = [
    { x: 5200, y: 4000 },
    { x: 300, y: 4000 },
  ].map((point) => mapOf(site).toSite(point));
  const blue = async (at: typeof sky) => {
    const [red = 0, , most = 0] = at === undefined ? [] : await inkAt(page, at);
    return most - red;
  };
  await expect.poll(() => blue(sky), { timeout: 30_000 }).toBeGreaterThan(30);
  expect(await blue(ground)).toBeLessThan(0);
  const painted = await longest();
  console.log(
    `40 megapixels (${(photo.buffer.length / 1e6).toFixed(1)} MB): longest block while it is read ${Math.round(block)} of ${took} ms, with saving it ${Math.round(painted)} ms; a wheel turn answered in ${answered} ms`,
  );
  expect(block).toBeLessThan(shareOf(took));
});

test('a plat of 30,000 lines on a page does not freeze the pad while it is drawn', async ({
  page,
}) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  const lines = Array.from({ length: 30_000 }, (_, n) => {
    const [x, y] = [20 + ((n * 37) % 570), 20 + ((n * 91) % 750)];
    return `${x} ${y} m ${x + (n % 29)} ${y + (n % 17)} l S`;
  });
  const longest = await watchBlocks(page);
  const plat = pdfFile('plat.pdf', ['Plat'], lines.join(' '));
  const started = Date.now();
  await dropFile(page, plat);
  await expect(page.getByText('plat.pdf: under the drawing')).toBeVisible({ timeout: 60_000 });
  const took = Date.now() - started;
  const block = await longest();
  console.log(`a page of 30,000 lines: longest block ${Math.round(block)} of ${took} ms`);
  expect(block).toBeLessThan(shareOf(took));
});

test('with 8 MB of picture in the file an edit blocks the page no longer than without', async ({
  page,
}, info) => {
  const yard = yardPage(page);
  await yard.openEmpty();
  await bring(page, await photoFile(page, { name: 'photo.jpg', width: 800, height: 600 }));
  const marked = async (): Promise<number> => {
    const longest = await watchBlocks(page);
    await yard.take('Mark');
    for (const x of [300, 360, 420, 480, 540]) await yard.pressAt(x, 300);
    await page.waitForTimeout(500);
    return longest();
  };
  const plain = await marked();
  const site = await yard.saved();
  const [[id, picture] = ['', { type: 'image/jpeg', data: '' }] as const] = Object.entries(
    site.pictures,
  );
  // what follows the end of a JPEG is passed over by who decodes it: as much as a file takes
  const bytes = Buffer.concat([Buffer.from(picture.data, 'base64'), Buffer.alloc(6_000_000)]);
  const data = bytes.subarray(0, 6_000_000).toString('base64');
  const large = { ...site, pictures: { [id]: { ...picture, data } } };
  expect(data).toHaveLength(8_000_000);
  await page.getByRole('button', { name: 'Job & file' }).click();
  const path = info.outputPath('large.site.json');
  writeFileSync(path, JSON.stringify(large));
  await page.getByLabel('Site file to open').setInputFiles(path);
  // it is a copy of the job on the pad
  await page.getByRole('button', { name: 'Open as a job of its own' }).click();
  await expect(page.getByRole('dialog')).toBeHidden();
  await page.waitForTimeout(1500);
  const full = await marked();
  console.log(
    `five marks set: longest block ${Math.round(plain)} ms with a small picture, ${Math.round(full)} ms with one of 8,000,000 characters in the file`,
  );
  expect(full).toBeLessThan(plain + 150);
  await page.reload();
  expect((await yard.saved()).pictures).toEqual(large.pictures);
});
