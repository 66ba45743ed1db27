import { readFileSync } from 'node:fs';
import { expect, type Download, type Locator, type Page } from '@playwright/test';
import { openSite } from '../src/site/openSite.ts';
import type { Site } from '../src/site/site.ts';

export type Way = 'North, up' | 'South, down' | 'East, to the right' | 'West, to the left';

/** The program as a person meets it: what is on the screen, by its written names. */
export const yardPage = (page: Page) => {
  const pad = page.getByRole('application');

  /** Presses a point of the pad, in CSS px from its upper left corner, as the device would. */
  const pressAt = async (x: number, y: number): Promise<void> => {
    const box = await pad.boundingBox();
    if (box === null) throw new Error('the pad is not on the screen');
    const touch = await page.evaluate(() => window.matchMedia('(pointer: coarse)').matches);
    if (touch) await page.touchscreen.tap(box.x + x, box.y + y);
    else await page.mouse.click(box.x + x, box.y + y);
  };

  /** Presses a point of the ground, in inches. */
  const pressGround = async (x: number, y: number): Promise<void> => {
    const view = (await pad.getAttribute('data-view')) ?? '';
    const [scale = 1, left = 0, top = 0] = view.split(' ').map(Number);
    await pressAt(left + x * scale, top - y * scale);
  };

  const entry: Locator = page.getByRole('form', { name: 'Length and direction of this piece' });

  const download = async (press: () => Promise<void>): Promise<string> => {
    const coming: Promise<Download> = page.waitForEvent('download');
    await press();
    return (await coming).path();
  };

  return {
    pad,
    entry,
    pressGround,
    pressAt,
    /** Opens the program with nothing kept on the device. */
    openEmpty: async (): Promise<void> => {
      await page.goto('/index.html');
      await expect(
        page.getByRole('heading', { name: 'Start with what stands still' }),
      ).toBeVisible();
    },
    take: (tool: string): Promise<void> =>
      page.getByRole('toolbar', { name: 'Tools' }).getByRole('button', { name: tool }).click(),
    /** Types a length for the piece being drawn and sends it one of the four ways. */
    piece: async (length: string, way: Way): Promise<void> => {
      await entry.getByLabel('Length', { exact: true }).fill(length);
      await entry.getByRole('button', { name: way }).click();
    },
    finish: (): Promise<void> => entry.getByRole('button', { name: 'Finish' }).click(),
    close: (): Promise<void> => entry.getByRole('button', { name: 'Close to start' }).click(),
    /** Does something on the card beside the pad; on a phone the card is pulled up for it. */
    onCard: async (deed: () => Promise<unknown>): Promise<void> => {
      await expect(pad).toBeVisible();
      const pull = page.getByRole('button', { name: /^Pull up/ });
      const folded = await pull.isVisible();
      if (folded) await pull.click();
      await deed();
      if (folded) await page.getByRole('button', { name: 'Put down' }).click();
    },
    show: (tab: string): Promise<void> =>
      page.getByRole('link', { name: tab, exact: true }).click(),
    download,
    /** The site as the program saves it. */
    saved: async (): Promise<Site> => {
      await page.getByRole('button', { name: 'Job & file' }).click();
      const path = await download(() => page.getByRole('button', { name: 'Save file' }).click());
      await page.getByRole('button', { name: 'Done' }).click();
      const opened = openSite(readFileSync(path, 'utf8'));
      if (!opened.ok) throw new Error(opened.reason);
      return opened.value;
    },
  };
};
