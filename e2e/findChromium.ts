import { existsSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { findTool } from '../tests/findTool.ts';

const ownBrowser = (): string | null => {
  const file = chromium.executablePath();
  return existsSync(file) ? file : null;
};

/**
 * A Chromium for the tests, in this order: the file named by LATHLINE_CHROMIUM, Playwright's own
 * where it is installed, the system's, else installed as root on Debian, else one clear line.
 */
export const findChromium = (): string => {
  const named = process.env['LATHLINE_CHROMIUM'];
  if (named !== undefined && named !== '') {
    if (existsSync(named)) return named;
    throw new Error(`LATHLINE_CHROMIUM names ${named}: expected a Chromium there`);
  }
  return ownBrowser() ?? findTool('chromium', 'chromium');
};

/** How the tests start it: no sandbox as root, no traffic of its own. */
export const browserFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
