import { readFileSync } from 'node:fs';
import { expect, type Page } from '@playwright/test';
import { addPin } from '../src/site/edits/addPin.ts';
import { addShots } from '../src/site/edits/addShots.ts';
import { addUnderlay } from '../src/site/edits/addUnderlay.ts';
import { openSite } from '../src/site/openSite.ts';
import { saveSite } from '../src/site/saveSite.ts';
import type { Site } from '../src/site/site.ts';
import { inches } from '../src/units/inches.ts';

const taped = (): Site => {
  const url = new URL('../sample-sites/taped-yard.site.json', import.meta.url);
  const opened = openSite(readFileSync(url, 'utf8'));
  if (!opened.ok) throw new Error(opened.reason);
  return opened.value;
};

/**
 * The taped yard with a shot of the ground, ground that is kept clear, a held post, and a picture that is
 * beside the file: one of each that no sample has together.
 */
const richYard = (): Site => {
  const leg = { line: 'line:1', leg: 'vertex:6' } as const;
  const shot = addShots(taped(), [{ x: 100, y: 500, z: inches(14), label: 'drain' }]);
  const clear = addPin(shot, {
    ...leg,
    anchor: { from: 'start', offset: inches(60) },
    holds: { kind: 'clear', reach: inches(9) },
  });
  const held = addPin(clear, {
    ...leg,
    anchor: { from: 'start', offset: inches(120) },
    holds: { kind: 'post' },
  });
  return addUnderlay(held, {
    label: 'plat',
    picture: `picture:${'ab'.repeat(32)}`,
    file: 'plat.png',
    width: 400,
    height: 300,
    ties: [
      { u: 0, v: 0, x: -200, y: 900 },
      { u: 400, v: 300, x: 600, y: 300 },
    ],
  });
};

/** Opens that yard as a file. */
export const openRichYard = async (page: Page): Promise<void> => {
  await page.getByRole('button', { name: /^Job & file/ }).click();
  await page.getByLabel('Site file to open').setInputFiles({
    name: 'one-of-each.json',
    mimeType: 'application/json',
    buffer: Buffer.from(saveSite(richYard())),
  });
  await expect(page.locator('dialog[open]')).toBeHidden();
};
