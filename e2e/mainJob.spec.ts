import { expect, test } from '@playwright/test';
import { layOutSite } from '../src/engine/layOutSite.ts';
import { tapeReadings } from '../src/engine/posts/tapeReadings.ts';
import { formatLength } from '../src/units/formatLength.ts';
import { lathSheet } from './lathSheet.ts';
import { popplerText, qpdfCheck, textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

test('from an empty pad to a crew sheet that says what the engine worked out', async ({
  page,
}, info) => {
  const yard = yardPage(page);
  await yard.openEmpty();

  await page.getByRole('button', { name: 'Draw the house' }).click();
  await yard.pressAt(150, 250);
  await yard.piece(`40'`, 'East, to the right');
  await yard.piece(`28'`, 'South, down');
  await yard.piece(`40'`, 'West, to the left');
  await yard.close();
  await page.getByRole('button', { name: 'Show all' }).click();
  const house = await yard.saved();
  const corners = Object.values(house.marks);
  const back = Math.max(...corners.map(({ y }) => y));
  const left = Math.min(...corners.map(({ x }) => x));

  await yard.take('Fence');
  await yard.pressGround(left, back);
  await yard.piece(`20'`, 'West, to the left');
  await yard.piece(`43' 7 1/2"`, 'North, up');
  await yard.piece(`60'`, 'East, to the right');
  await yard.piece(`43'-7 1/2"`, 'South, down');
  await yard.finish();
  await page.getByRole('button', { name: 'Show all' }).click();

  await yard.take('Gate');
  await yard.onCard(() =>
    page.getByLabel('Gate', { exact: true }).selectOption({ label: `Double, sold for 10'-0"` }),
  );
  await yard.pressGround(left + 120, back + 523.5);
  const site = await yard.saved();
  expect(Object.keys(site.gates)).toHaveLength(1);
  const layout = layOutSite(site);
  const lines = Object.values(layout.lines);
  const lengths = lines.flatMap(({ legs }) => legs.map(({ length }) => length));
  [240, 523.5, 720, 523.5].forEach((typed, n) => expect(lengths[n]).toBeCloseTo(typed, 9));
  expect(lengths).toHaveLength(4);

  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  const written = (await textsOf(file)).flat().join('\n');
  const write = (length: Parameters<typeof formatLength>[0]) => formatLength(length, site.lengths);
  const [gate] = Object.values(layout.gates);
  expect(gate?.placed).toBe(true);
  expect(written).toContain(write(gate?.opening.target ?? (0 as never)));
  for (const run of lines.flatMap(({ runs }) => runs)) {
    const { posts, spaces, total } = tapeReadings(run, 'start', site.lengths);
    for (const length of [...spaces, total, ...posts.map(({ reading }) => reading)]) {
      expect(written).toContain(write(length));
    }
  }
  expect(await textsOf(lathSheet(site, info.outputPath('yard')))).toEqual(await textsOf(file));
  expect(popplerText(file)).toContain(write(gate?.opening.target ?? (0 as never)));
  expect(qpdfCheck(file)).toContain('No syntax or stream encoding errors found');
});
