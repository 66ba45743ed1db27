import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { check } from '@placemarkio/check-geojson';
import DxfReader from 'dxf-parser';
import { dxfText, entity, line } from '../tests/importers/dxf/dxfText.ts';

/** The sheet that brings a file in, by its written names. */
const bringOn = (page: Page) => {
  const sheet = page.getByRole('dialog', { name: 'Bring in' });
  return {
    sheet,
    choose: async (name: string, text: string): Promise<void> => {
      await page.getByRole('button', { name: 'Job & file' }).click();
      const file = { name, mimeType: 'text/plain', buffer: Buffer.from(text) };
      await page.getByLabel('File to bring in').setInputFiles(file);
      await expect(sheet).toBeVisible();
    },
    drop: async (name: string, text: string): Promise<void> => {
      const data = await page.evaluateHandle(
        ([called, content]) => {
          const transfer = new DataTransfer();
          transfer.items.add(new File([content], called));
          return transfer;
        },
        [name, text] as const,
      );
      await page.locator('main').dispatchEvent('drop', { dataTransfer: data });
    },
    said: (text: string) => expect(page.getByRole('status').last()).toContainText(text),
    undo: () => page.getByRole('button', { name: /^Undo/ }).click(),
  };
};

interface Watched {
  /** The longest that the page did not answer, and how long the work took; milliseconds. */
  readonly worst: number;
  readonly took: number;
}

/** Watches how the page answers while work is done. */
const watched = async (page: Page, work: () => Promise<void>): Promise<Watched> => {
  await page.evaluate(() => {
    const watch = { began: performance.now(), last: performance.now(), worst: 0, on: true };
    Object.assign(window, { watch });
    const tick = (): void => {
      const now = performance.now();
      watch.worst = Math.max(watch.worst, now - watch.last);
      watch.last = now;
      if (watch.on) setTimeout(tick, 10);
    };
    tick();
  });
  await work();
  return page.evaluate(() => {
    const { watch } = window as unknown as {
      watch: { began: number; worst: number; on: boolean };
    };
    watch.on = false;
    return { worst: watch.worst, took: performance.now() - watch.began };
  });
};

const many = dxfText({
  units: 2,
  entities: [
    ...Array.from({ length: 49_960 }, (_, n) => {
      const [x, y] = [2_100_000 + (n % 250) * 10, 700_000 + Math.floor(n / 250) * 10];
      return line(`L${n % 20}`, x, y, x + 5, y + 3);
    }),
    ...Array.from({ length: 40 }, (_, n) =>
      line('FENCE', 2_100_000 + n * 10, 700_000, 2_100_010 + n * 10, 700_000),
    ),
  ],
});

test('a DXF of 50,000 entities is read beside the pad, which answers, and a layer of it is brought in and undone', async ({
  page,
}) => {
  const bring = bringOn(page);
  await page.goto('/index.html');
  await expect(page.getByRole('button', { name: 'Job & file' })).toBeVisible();
  await bring.choose('none.csv', 'x,y');
  await bring.sheet.getByRole('button', { name: 'Done' }).click();
  const { worst, took } = await watched(page, async () => {
    await bring.drop('site.dxf', many);
    await expect(bring.sheet.getByText('Moved: 0, 0 is here 2,101,000 east')).toBeVisible({
      timeout: 60_000,
    });
  });
  test.info().annotations.push({ type: 'answers', description: `${worst} ms of ${took} ms` });
  // read on the page itself it would not answer for most of that time
  expect(worst).toBeLessThan(took / 2);
  const layers = bring.sheet.getByRole('combobox');
  await expect(bring.sheet.getByLabel('FENCE: 1 line')).toHaveValue('fence line');
  await expect(bring.sheet.getByLabel('L7: 2,498 lines')).toHaveValue('leave out');
  // numbers and 21 layers
  await expect(layers).toHaveCount(22);
  await bring.sheet.getByLabel('L7: 2,498 lines').selectOption('Boundary');
  await bring.sheet.getByLabel('L8: 2,498 lines').selectOption('Boundary');
  await bring.sheet.getByLabel('L9: 2,498 lines').selectOption('Boundary');
  await bring.sheet.getByRole('button', { name: 'Bring in 7,495' }).click();
  await expect(bring.sheet.getByRole('alert')).toHaveText(
    'site.dxf: features: expected at most 5000 entries, found 7494: leave some layers out; the drawing is as it was',
  );
  await bring.sheet.getByRole('button', { name: 'Leave all out' }).click();
  await expect(bring.sheet.getByRole('button', { name: 'Nothing is chosen' })).toBeDisabled();
  await bring.sheet.getByLabel('FENCE: 1 line').selectOption('Fence line');
  await bring.sheet.getByRole('button', { name: 'Bring in 1', exact: true }).click();
  await expect(bring.sheet).toHaveCount(0);
  await bring.said('site.dxf: 1 fence line, 41 marks brought in');
  await bring.undo();
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});

const ring = [
  [-96, 41],
  [-95.9996, 41],
  [-95.9996, 41.0003],
  [-96, 41.0003],
  [-96, 41],
];
const parcel = (name: string, coordinates: unknown) => ({
  type: 'Feature',
  properties: { name },
  geometry: { type: 'Polygon', coordinates: [coordinates] },
});

test('a GeoJSON with a bad ring tells it in one line, brings the good one, and goes out again as GeoJSON and DXF', async ({
  page,
}) => {
  const bring = bringOn(page);
  await page.goto('/index.html');
  const parcels = {
    type: 'FeatureCollection',
    features: [parcel('Lot 7', ring), parcel('Lot 8', ring.slice(0, 4))],
  };
  await bring.drop('lots.json', JSON.stringify(parcels));
  await expect(bring.sheet.getByRole('alert')).toContainText(
    'features › 2 › geometry › ring 1: expected a ring that ends where it begins, found one that stays open',
  );
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
  await expect(bring.sheet.getByText('Lengths are out by less than 0.001 in 1,000')).toBeVisible();
  await bring.sheet.getByRole('button', { name: 'Bring in 1', exact: true }).click();
  await bring.said('lots.json: 1 feature, 4 marks brought in');
  await page.goto('/index.html#sheet');
  await page.getByText('For other programs and a total station').click();
  const saved = async (name: string): Promise<string> => {
    const waits = page.waitForEvent('download');
    await page.getByRole('button', { name }).click();
    return readFileSync(await (await waits).path(), 'utf8');
  };
  const geo = check(await saved('Download GeoJSON')) as unknown as {
    features: { properties: { kind: string }; geometry: { coordinates: [number, number][][] } }[];
  };
  const [boundary] = geo.features.filter(({ properties }) => properties.kind === 'boundary');
  const corners = boundary?.geometry.coordinates[0]?.slice(0, 4) ?? [];
  for (const [longitude = NaN, latitude = NaN] of ring) {
    const off = corners.map(([lon, lat]) => Math.hypot(lon - longitude, lat - latitude));
    // a billionth of a degree is a tenth of a millimetre
    expect(Math.min(...off)).toBeLessThan(2e-9);
  }
  const dxf = new DxfReader().parseSync(await saved('Download DXF'));
  expect(
    dxf?.entities.filter(({ layer, type }) => layer === 'BOUNDARY' && type === 'LWPOLYLINE'),
  ).toHaveLength(1);
  expect(await saved('Download stakes as CSV')).toContain('Lot 7 corner 1');
});

test('a CSV with a missing column is one line; with its columns it comes as marks and heights', async ({
  page,
}) => {
  const bring = bringOn(page);
  await page.goto('/index.html');
  await bring.drop('pins.csv', 'name,x,z\nA,1,2');
  await expect(bring.sheet.getByRole('alert')).toHaveText(
    'pins.csv: line 1: expected a column for y or north, with a unit of ft, in, m, cm, mm or none; found “name, x, z”; the drawing is as it was',
  );
  await bring.sheet.getByRole('button', { name: 'Done' }).click();
  await bring.choose('pins.csv', 'name;x;y;z\nA;1,5;2;0,5\nB;30;wide;1\nC;30;40;1');
  await expect(bring.sheet.getByRole('alert')).toContainText(
    'line 3: y: expected a number, found “wide”',
  );
  await expect(bring.sheet.getByText('The file names no unit: read in feet')).toBeVisible();
  await bring.sheet.getByLabel('Numbers are').selectOption('metres');
  await expect(bring.sheet.getByText('Read in metres, as chosen')).toBeVisible();
  await bring.sheet.getByRole('button', { name: 'Bring in 4' }).click();
  await bring.said('pins.csv: 2 marks, 2 grade shots brought in');
  await bring.undo();
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
});

test('a DXF that breaks off, junk and a file of another kind are one line each, and the drawing stays', async ({
  page,
}) => {
  const bring = bringOn(page);
  await page.goto('/?sample=back-yard');
  const good = dxfText({
    units: 1,
    entities: [entity('CIRCLE', 'POOL', [10, 0], [20, 0], [40, 100])],
  });
  const bad: readonly (readonly [name: string, text: string, says: string])[] = [
    [
      'cut.dxf',
      good.slice(0, 60),
      'cut.dxf: ends too early: expected EOF at its end, so part of it is missing',
    ],
    ['junk.dxf', '\0\u0001junk', 'junk.dxf: expected text, found something else'],
    ['plan.csv', good, 'plan.csv: expected a list of points by its name, found DXF'],
  ];
  for (const [name, text, says] of bad) {
    await bring.drop(name, text);
    await expect(bring.sheet.getByRole('alert')).toHaveText(`${says}; the drawing is as it was`);
    await page.keyboard.press('Escape');
    await expect(bring.sheet).toHaveCount(0);
  }
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
  await bring.drop('pool.dxf', good);
  await expect(bring.sheet.getByLabel('POOL: 1 closed line')).toHaveValue('pool');
  await bring.sheet.getByLabel('Curves become straight pieces').selectOption('3"');
  await bring.sheet.getByRole('button', { name: 'Bring in 1', exact: true }).click();
  // 2 acos(1 - 3/100) is 28.1 degrees: 7 pieces in each half
  await bring.said('pool.dxf: 1 feature, 14 marks brought in');
});
