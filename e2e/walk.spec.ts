import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { padPixels } from './padPixels.ts';
import { yardPage } from './yardPage.ts';

const start = { latitude: 41.2, longitude: -85.1, accuracy: 6 };
/** 0.0002 degrees of latitude are 22.2 m, about 73 ft. */
const north = { latitude: 41.2002, longitude: -85.1, accuracy: 9 };
const east = { latitude: 41.2002, longitude: -85.0998, accuracy: 25 };

const walk = (page: Page) => page.getByRole('region', { name: 'Walk' });
const drop = (page: Page) => walk(page).getByRole('button', { name: 'Drop a mark here' });

interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** The share of a circle on the pad (CSS px) along which the pink of survey marks is painted. */
const pinkAlong = async (page: Page, { x, y, radius }: Circle): Promise<number> => {
  const turns = Array.from({ length: 360 }, (_, n) => (n * Math.PI) / 180);
  const spots = turns.flatMap((turn) =>
    [-1, 0, 1].map((off) => ({
      x: Math.round(x + (radius + off) * Math.cos(turn)),
      y: Math.round(y + (radius + off) * Math.sin(turn)),
      half: 0,
    })),
  );
  const pink = (await padPixels(page, spots)).map(
    ([red = 0, green = 0, blue = 0]) => red - green > 40 && blue - green > 15,
  );
  return turns.filter((_, n) => pink.slice(3 * n, 3 * n + 3).includes(true)).length / turns.length;
};

test('three marks are dropped where one walks, each with its circle, and undone one by one', async ({
  page,
  context,
}) => {
  const yard = yardPage(page);
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation(start);
  const projections: string[] = [];
  page.on('request', (request) => {
    if (/\/earth-[^/]*\.js$/.test(request.url())) projections.push(request.url());
  });
  await yard.openEmpty();
  expect(projections).toEqual([]);
  await yard.take('Walk');
  await expect(walk(page)).toContainText('You are here, within 20 ft 19 times in 20.');
  expect(projections).toHaveLength(1);
  const pad = await yard.pad.boundingBox();
  await drop(page).click();
  await context.setGeolocation(north);
  await expect(walk(page)).toContainText('within 30 ft');
  await drop(page).click();
  await context.setGeolocation(east);
  await expect(walk(page)).toContainText('within 83 ft 19 times in 20. Rough, over 50 ft');
  await drop(page).click();
  await expect(page.getByRole('status')).toContainText('Walk 3 is kept, and it is rough');
  await page.getByRole('button', { name: 'OK', exact: true }).click();

  const site = await yard.saved();
  expect(Object.values(site.marks).map(({ label }) => label)).toEqual([
    'Walk 1',
    'Walk 2',
    'Walk 3',
  ]);
  const fixes = Object.values(site.observations);
  // one standard deviation of each: 6, 9 and 25 m over 2.4477 (Rayleigh distribution), in inches
  expect(fixes.map((seen) => (seen.kind === 'fix' ? Math.round(seen.accuracy) : 0))).toEqual([
    97, 145, 402,
  ]);
  const [first, second, third] = Object.values(site.marks);
  if (first === undefined || second === undefined || third === undefined) throw new Error('marks');
  // a second of latitude in 41 degrees is 30.85 m, of longitude 23.3 m: 22.2 m north, 16.8 m east
  expect((second.y - first.y) * 0.0254).toBeCloseTo(22.21, 1);
  expect(second.x - first.x).toBeCloseTo(0, 0);
  expect((third.x - second.x) * 0.0254).toBeCloseTo(16.77, 1);
  expect(site.origin?.latitude).toBeCloseTo(41.2, 2);
  // the first came to stand in the middle of what was seen
  const [scale = 1, left = 0, top = 0] = ((await yard.pad.getAttribute('data-view')) ?? '')
    .split(' ')
    .map(Number);
  expect(Math.abs(left + first.x * scale - (pad?.width ?? 0) / 2)).toBeLessThan(2);
  expect(Math.abs(top - first.y * scale - (pad?.height ?? 0) / 2)).toBeLessThan(2);

  // 6 m round the first: dashes and gaps, and nothing inside
  const circle = {
    x: left + first.x * scale,
    y: top - first.y * scale,
    radius: (6 / 0.0254) * scale,
  };
  await expect.poll(() => pinkAlong(page, circle)).toBeGreaterThan(0.2);
  expect(await pinkAlong(page, { ...circle, radius: 0.8 * circle.radius })).toBeLessThan(0.05);

  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(Object.keys((await yard.saved()).marks)).toHaveLength(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  const empty = await yard.saved();
  expect([empty.marks, empty.observations, empty.origin]).toEqual([{}, {}, null]);
  await page.getByRole('button', { name: 'Redo' }).click();
  expect((await yard.saved()).origin).not.toBeNull();
});

test('readings taken standing still are averaged, and the mark can be renamed and drawn onto', async ({
  page,
  context,
}) => {
  const yard = yardPage(page);
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation(start);
  await yard.openEmpty();
  await yard.take('Walk');
  await walk(page).getByRole('button', { name: 'Average' }).click();
  await expect(walk(page)).toContainText('Average of 1 reading');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  await context.setGeolocation({ ...start, latitude: 41.20002 });
  await expect(walk(page)).toContainText('Average of 2 readings, within 20 ft');
  await context.setGeolocation({ ...start, latitude: 41.201 });
  await expect(walk(page)).toContainText('You have moved: averaging starts again here.');
  await context.setGeolocation(start);
  await expect(walk(page)).toContainText('You have moved');
  await drop(page).click();
  await expect(page.getByRole('heading', { name: 'Mark: Walk 1' })).toBeVisible();
  await page.getByRole('button', { name: 'OK', exact: true }).click();
  await yard.onCard(async () => {
    await page.getByLabel('Name').fill('NE pin');
    await page.getByLabel('Name').press('Enter');
    await expect(page.getByText('Rough, by GPS, ±20 ft')).toBeVisible();
  });
  await walk(page).getByRole('button', { name: 'Stop' }).click();
  await expect(walk(page)).toBeHidden();
  const [pin] = Object.values((await yard.saved()).marks);
  await yard.take('Fence');
  await yard.pressGround(pin?.x ?? 0, pin?.y ?? 0);
  await yard.piece('20', 'East, to the right');
  const site = await yard.saved();
  expect(Object.values(site.marks).map(({ label }) => label)).toEqual(['NE pin', '']);
  expect(
    Object.values(site.observations)
      .map(({ kind }) => kind)
      .toSorted(),
  ).toEqual(['fix', 'tape']);
});

test('a position that is refused is one line, and can be asked for again', async ({
  page,
  context,
}) => {
  const yard = yardPage(page);
  await context.clearPermissions();
  await yard.openEmpty();
  await yard.take('Walk');
  await expect(walk(page)).toContainText('Position refused. Allow it for this page');
  await expect(drop(page)).toBeHidden();
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation(start);
  await walk(page).getByRole('button', { name: 'Try again' }).click();
  await expect(drop(page)).toBeVisible();
  await walk(page).getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByRole('heading', { name: 'Start with what stands still' })).toBeVisible();
});

test('one who is far from the place of the drawing is told so', async ({ page, context }) => {
  const yard = yardPage(page);
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation(start);
  await yard.openEmpty();
  await yard.take('Walk');
  await drop(page).click();
  await context.setGeolocation({ ...start, latitude: 42.2 });
  await expect(walk(page)).toContainText('You are 69 miles from the place of this drawing');
  await expect(drop(page)).toBeHidden();
});

test('a walk pauses while the page is hidden, and says so where there is no position at all', async ({
  page,
  context,
}) => {
  const yard = yardPage(page);
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation(start);
  await yard.openEmpty();
  const show = (visibilityState: string): Promise<void> =>
    page.evaluate((value) => {
      Object.defineProperty(document, 'visibilityState', { value, configurable: true });
      document.dispatchEvent(new Event('visibilitychange'));
    }, visibilityState);
  await yard.take('Walk');
  await expect(drop(page)).toBeVisible();
  await show('hidden');
  await expect(walk(page)).toContainText('Paused while the page is hidden.');
  await expect(drop(page)).toBeHidden();
  await show('visible');
  await expect(drop(page)).toBeVisible();
  await walk(page).getByRole('button', { name: 'Stop' }).click();
  await page.evaluate(() => Reflect.deleteProperty(Navigator.prototype, 'geolocation'));
  await yard.take('Walk');
  await expect(walk(page)).toContainText('This browser tells no position.');
});
