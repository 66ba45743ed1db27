import { expect, test, type Page } from '@playwright/test';
import { surveyed } from '../src/engine/survey/surveyed.ts';
import { distance } from '../src/geometry/distance.ts';
import type { MarkId } from '../src/site/ids.ts';
import type { Site } from '../src/site/site.ts';
import { pngFile } from './pictureFiles.ts';
import { begin, bring, mapOf } from './underlayPage.ts';
import { yardPage } from './yardPage.ts';

type Yard = ReturnType<typeof yardPage>;
type Point = readonly [x: number, y: number];

/** The true house, inches: five corners, three of them square. */
const truth: readonly Point[] = [
  [0, 0],
  [480, 0],
  [480, 240],
  [300, 360],
  [0, 360],
];

/** As a hand traces it from the photo, a foot or two off. */
const traced: readonly Point[] = truth.map(([x, y], n) => [
  x + [0, 14, -10, 12, -16][n]!,
  y + [0, 16, -12, 18, 10][n]!,
]);

/** Where a point of the true house is on the photo: 1 px for 1 in, the first corner at 60, 420. */
const onPhoto = ([x, y]: Point): { x: number; y: number } => ({ x: 60 + x, y: 420 - y });

/** A photo from above of the house on grass, 600 by 480 px; made for this test. */
const photo = pngFile('from-above.png', [600, 480], (px, py) => {
  const [x, y] = [px - 60, 420 - py];
  const inside = x >= 0 && x < 480 && y >= 0 && y < 360 && 2 * x + 3 * y < 1680;
  return inside ? [150, 90, 70] : [120, 150, 100];
});

const between = (a: number, b: number): number =>
  Math.hypot(truth[a]![0] - truth[b]![0], truth[a]![1] - truth[b]![1]);

/** To an eighth, as it is read off a tape, in inches. */
const reading = (a: number, b: number): string => `${Math.round(between(a, b) * 8) / 8}in`;

const mark = (n: number): MarkId => `mark:${n + 1}`;

const entry = (page: Page) => page.getByRole('form', { name: 'What the tape reads' });

/** A tape: the site as it stands, the two corners, and what is typed. */
interface Pulled {
  readonly site: Site;
  readonly pair: Point;
  readonly reads: string;
}

const pull = async (page: Page, yard: Yard, { site, pair, reads }: Pulled): Promise<void> => {
  // the form and the card take room from the pad
  await page.getByRole('button', { name: 'Show all' }).click();
  const [a, b] = pair.map((n) => site.marks[mark(n)]!);
  await yard.pressGround(a!.x, a!.y);
  await yard.pressGround(b!.x, b!.y);
  await entry(page).getByRole('textbox').fill(reads);
  await entry(page).getByRole('button', { name: 'Set', exact: true }).click();
};

/** Lays the photo, says what its front wall measures on it, and traces the house. */
const traceHouse = async (yard: Yard, page: Page): Promise<void> => {
  await yard.openEmpty();
  await bring(page, photo);
  const guessed = mapOf(await yard.saved());
  await begin(page, /^Two points, a known/);
  for (const end of [truth[0]!, truth[1]!]) {
    const { x, y } = guessed.toSite(onPhoto(end));
    await yard.pressGround(x, y);
  }
  const form = page.getByRole('form', { name: 'Distance on the picture' });
  await form.getByLabel('From point 1 to point 2').fill(`40'`);
  await form.getByRole('button', { name: 'Set', exact: true }).click();
  await yard.onCard(() => page.getByLabel('Locked').check());
  await page.getByRole('button', { name: 'Show all' }).click();
  const sized = mapOf(await yard.saved());
  await yard.take('Building');
  for (const corner of traced) {
    const { x, y } = sized.toSite(onPhoto(corner));
    await yard.pressGround(x, y);
  }
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Show all' }).click();
};

const key = (page: Page) => page.getByRole('button', { name: /^Tapes/ });
const notes = (page: Page) => page.getByRole('dialog', { name: 'Tapes and what they say' });

/** Opens the tapes; on a phone the card that the key is on is pulled up for it. */
const open = async (page: Page): Promise<void> => {
  const up = page.getByRole('button', { name: /^Pull up/ });
  if (await up.isVisible()) await up.click();
  await key(page).click();
};

/** Closes the tapes, and on a phone lets the pad be seen again. */
const close = async (page: Page): Promise<void> => {
  await notes(page).getByRole('button', { name: 'Done' }).click();
  const down = page.getByRole('button', { name: 'Put down' });
  if (await down.isVisible()) await down.click();
};

test('a house is traced from a photo and taped, and the tape that was misread is named', async ({
  page,
}) => {
  const yard = yardPage(page);
  await traceHouse(yard, page);
  const site = await yard.saved();
  expect(Object.keys(site.marks)).toHaveLength(5);
  await yard.take('Tape');
  const legs = [0, 1, 2, 3, 4].map((n): Point => [n, (n + 1) % 5]);
  let stood = site;
  for (const pair of legs) {
    await pull(page, yard, { site: stood, pair, reads: reading(...pair) });
    stood = await shown(yard);
  }
  await open(page);
  await expect(notes(page).getByRole('status')).toHaveText(/marks? (is|are) loose/);
  await close(page);
  // the first diagonal is read a foot too long
  const tooLong = `${Math.round(between(0, 2) * 8) / 8 + 12}in`;
  await pull(page, yard, { site: stood, pair: [0, 2], reads: tooLong });
  stood = await shown(yard);
  await pull(page, yard, { site: stood, pair: [1, 4], reads: reading(1, 4) });
  for (const n of [0, 1, 4]) await squareCorner(page, yard, n);
  await open(page);
  await expect(notes(page).getByRole('status')).toHaveText('One reading disagrees with the rest');
  await expect(notes(page)).toContainText(
    `Building corner 1 to building corner 3 reads 45'-8 5/8", everything else says 44'-8`,
  );
  const wrong = notes(page).getByRole('listitem', {
    name: 'Building corner 1 to building corner 3',
  });
  await wrong.getByRole('textbox').first().fill(reading(0, 2));
  await wrong.getByRole('textbox').first().press('Enter');
  await expect(notes(page).getByRole('status')).toHaveText(/^Held/);
  await close(page);
  const end = await shown(yard);
  for (const [a, b] of [...legs, [0, 2], [1, 4], [1, 3]] as const) {
    expect(distance(end.marks[mark(a)]!, end.marks[mark(b)]!)).toBeCloseTo(between(a, b), 0);
  }
});

/** The site as it stands, from the file that the program saves. */
const shown = async (yard: Yard): Promise<Site> => surveyed(await yard.saved(), null).site;

const squareCorner = async (page: Page, yard: Yard, n: number): Promise<void> => {
  await yard.take('Select');
  const site = await shown(yard);
  const { x, y } = site.marks[mark(n)]!;
  await page.getByRole('button', { name: 'Show all' }).click();
  await yard.pressGround(x, y);
  await yard.onCard(async () => {
    const more = page.getByText(/^What holds it/);
    const tick = page.getByLabel(/it is a square corner$/);
    if (!(await tick.isVisible())) await more.click();
    await tick.check();
  });
};
