import { expect, type Locator, type Page } from '@playwright/test';
import { pictureMap, type PictureMap } from '../src/geometry/pictureMap.ts';
import type { Site } from '../src/site/site.ts';
import { tiesOf } from '../src/site/tiesOf.ts';
import type { Underlay } from '../src/site/underlay.ts';
import { padPixels } from './padPixels.ts';
import { dropFile } from './pictureFiles.ts';

/** The picture under the drawing of a saved site. */
export const first = (site: Site): Underlay => {
  const [underlay] = Object.values<Underlay>(site.underlays);
  if (underlay === undefined) throw new Error('expected a picture under the drawing');
  return underlay;
};

/** How the picture of a saved site lies. */
export const mapOf = (site: Site): PictureMap => pictureMap(tiesOf(first(site)));

const middleOf = (numbers: readonly number[]): number =>
  numbers.toSorted((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? NaN;

/**
 * What the pad has painted where it shows a point of the ground, red, green and blue: the middle one of a
 * small patch, so that a line of the graph paper does not count.
 */
export const inkAt = async (
  page: Page,
  { x, y }: { readonly x: number; readonly y: number },
): Promise<number[]> => {
  const view = await page.locator('.pad').getAttribute('data-view');
  const [scale = 1, left = 0, top = 0] = (view ?? '').split(' ').map(Number);
  const at = { x: Math.round(left + x * scale), y: Math.round(top - y * scale), half: 4 };
  const [patch = []] = await padPixels(page, [at]);
  return [0, 1, 2].map((channel) => middleOf(patch.filter((_, n) => n % 4 === channel)));
};

/** Drops a picture on the program and waits until it lies there. */
export const bring = async (page: Page, file: Parameters<typeof dropFile>[1]): Promise<void> => {
  await dropFile(page, file);
  await expect(page.getByText(`${file.name}: under the drawing`)).toBeVisible();
};

/** The card of the picture that is selected. */
export const card = (page: Page): Locator =>
  page.getByRole('region', { name: 'Picture under the drawing' });

/** Takes up a way to lay the picture; on a phone its card puts itself down for that. */
export const begin = async (page: Page, way: RegExp): Promise<void> => {
  const pull = page.getByRole('button', { name: /^Pull up/ });
  if (await pull.isVisible()) await pull.click();
  await card(page).getByRole('button', { name: way }).click();
};
