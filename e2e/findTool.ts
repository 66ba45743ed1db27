import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from '@playwright/test';

const onPath = (name: string): string | null =>
  (process.env['PATH'] ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((file) => existsSync(file)) ?? null;

/** Installs a Debian package where that is possible; says nothing and returns where it is not. */
const install = (debian: string): void => {
  if (process.getuid?.() !== 0 || onPath('apt-get') === null) return;
  const quiet = { stdio: 'ignore', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
  try {
    execFileSync('apt-get', ['update'], quiet as object);
    execFileSync('apt-get', ['install', '-y', '--no-install-recommends', debian], quiet as object);
  } catch {
    // the caller says in one line what is missing
  }
};

/** A program that the tests call: on the PATH, else installed as root on Debian, else one clear line. */
export const findTool = (name: string, debian: string): string => {
  const found = onPath(name);
  if (found !== null) return found;
  install(debian);
  const installed = onPath(name);
  if (installed !== null) return installed;
  throw new Error(`the tests need ${name}: install the Debian package ${debian} or its like`);
};

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
