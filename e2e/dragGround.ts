import type { Page } from '@playwright/test';
import type { SitePoint } from '../src/geometry/point.ts';
import { yardPage } from './yardPage.ts';

/** Drags from one place of the ground to another, with a finger where the device has no mouse. */
export const dragGround = async (page: Page, from: SitePoint, to: SitePoint): Promise<void> => {
  const { pad } = yardPage(page);
  const view = ((await pad.getAttribute('data-view')) ?? '').split(' ').map(Number);
  const box = await pad.boundingBox();
  const [scale = 1, left = 0, top = 0] = view;
  const onScreen = ({ x, y }: SitePoint) => ({
    x: (box?.x ?? 0) + left + x * scale,
    y: (box?.y ?? 0) + top - y * scale,
  });
  const steps = [0, 1 / 3, 2 / 3, 1].map((share) =>
    onScreen({ x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }),
  );
  const [first = { x: 0, y: 0 }, ...rest] = steps;
  if (!(await page.evaluate(() => window.matchMedia('(pointer: coarse)').matches))) {
    await page.mouse.move(first.x, first.y);
    await page.mouse.down();
    for (const { x, y } of rest) await page.mouse.move(x, y);
    return page.mouse.up();
  }
  const device = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', points: SitePoint[]) =>
    device.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  await touch('touchStart', [first]);
  for (const point of rest) await touch('touchMove', [point]);
  await touch('touchEnd', []);
};
