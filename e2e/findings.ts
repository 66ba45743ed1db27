import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** Expects that axe finds nothing on the page as it stands. */
export const noFindings = async (page: Page): Promise<void> => {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
};

/** How far the page can be moved sideways, px. */
export const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const main = document.querySelector('main') ?? document.body;
    return Math.max(
      document.documentElement.scrollWidth - window.innerWidth,
      main.scrollWidth - main.clientWidth,
    );
  });
