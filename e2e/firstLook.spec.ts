import { expect, test } from '@playwright/test';

const yardIsShown = '() => document.getElementById("first") === null';

test('the yard is drawn where the pad will be, and the pad goes on from there', async ({
  page,
}) => {
  // what one draws with stays away until the first drawing was looked at
  let letGo: () => void = () => undefined;
  const looked = new Promise<void>((done) => {
    letGo = done;
  });
  await page.route(/\/show-[^/]*\.js$/, async (route) => {
    await looked;
    await route.continue();
  });
  await page.goto('/?sample=back-yard');
  const drawing = page.locator('#first canvas');
  await expect(drawing).toBeVisible();
  const first = await drawing.boundingBox();
  letGo();
  const pad = page.getByRole('application', { name: 'Drawing pad' });
  await expect(pad).toBeVisible();
  await page.waitForFunction(yardIsShown);
  const there = await pad.boundingBox();
  if (first === null || there === null) throw new Error('expected a drawing and a pad');
  for (const side of ['x', 'y', 'width', 'height'] as const) {
    expect(Math.abs(first[side] - there[side]), side).toBeLessThan(6);
  }
});

test('what cannot be fetched is one line, and comes when it is asked for again @desk', async ({
  page,
}) => {
  await page.route(/\/show-[^/]*\.js$/, (route) => route.abort());
  await page.goto('/?sample=back-yard');
  const told = page.getByRole('alert');
  await expect(told).toContainText('The program could not be loaded whole');
  await page.unroute(/\/show-[^/]*\.js$/);
  await page.route(/\/Openings-[^/]*\.js$/, (route) => route.abort());
  await told.getByRole('button', { name: 'Try again' }).click();
  await page.getByRole('link', { name: 'Openings' }).click();
  await expect(told).toContainText('cannot be fetched now');
  await page.unroute(/\/Openings-[^/]*\.js$/);
  await told.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('heading', { name: 'Walk gate' })).toBeVisible();
});
