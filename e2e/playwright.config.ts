import { defineConfig } from '@playwright/test';
import { browserFlags, findChromium } from './findChromium.ts';

const port = 4173;

/**
 * Which screens a test is run on. Every test is run on one at least; on all three what a screen changes and what
 * everybody does: the main job from an empty pad to the printed sheet, the openings, the load list, the tour, the
 * tape strip. On a desk and a phone, which have every layout between them, where only places and sizes are at
 * stake: axe, what must fit a width, cards that lie at the side here and over the pad there. All else, which no
 * size changes, is run once, on the screen of the person who does it: the office at its desk (books, rules, files,
 * orders, prices, deeds, keys), the rep on a tablet (tracing, taping, other ways, the proposal), the crew and
 * whoever walks the yard on a phone (levels, walking, what was set). What measures this machine or reads what was
 * built has no screen and is run at a desk.
 *
 * Whole files are listed here; a test of any other file says it by a tag, at the end of its title or beside it:
 * `@desk`, `@tablet`, `@phone`, or `@desk-phone` for both.
 */
const whole = {
  desktop: [
    'book.spec.ts',
    'bring.spec.ts',
    'claims.spec.ts',
    'crash.spec.ts',
    'heightZone.spec.ts',
    'merge.spec.ts',
    'offline.spec.ts',
    'ownAddress.spec.ts',
    'ownFile.spec.ts',
    'sheetAgain.spec.ts',
    'structure.spec.ts',
    'townRules.spec.ts',
    'twoWindows.spec.ts',
    'underlaySpeed.spec.ts',
  ],
  tablet: ['otherFences.spec.ts', 'squaring.spec.ts', 'survey.spec.ts'],
  phone: ['asSet.spec.ts', 'levels.spec.ts', 'touchYard.spec.ts', 'walk.spec.ts'],
} as const;

const notFor = {
  desktop: /@(tablet|phone)\b/,
  tablet: /@(desk|phone)\b/,
  phone: /@(desk(?!-)|tablet)\b/,
} as const;

export default defineConfig({
  testDir: '.',
  outputDir: '../test-results',
  fullyParallel: true,
  workers: 2,
  timeout: 120_000,
  // no test is about how fast a machine is
  expect: { timeout: 20_000 },
  reporter: [['list']],
  use: {
    baseURL: `http://localhost:${port}`,
    // each test is a first visit: keeping the program would only take its time
    serviceWorkers: 'block',
    screenshot: 'only-on-failure',
    launchOptions: {
      executablePath: findChromium(),
      args: browserFlags,
    },
  },
  webServer: {
    command: `npx vite preview --port ${port} --strictPort`,
    cwd: '..',
    port,
    reuseExistingServer: process.env['CI'] === undefined,
  },
  projects: [
    {
      name: 'desktop',
      testIgnore: [...whole.tablet, ...whole.phone],
      grepInvert: notFor.desktop,
      use: { viewport: { width: 1440, height: 900 } },
    },
    {
      name: 'tablet',
      testIgnore: [...whole.desktop, ...whole.phone],
      grepInvert: notFor.tablet,
      use: { viewport: { width: 1024, height: 768 }, hasTouch: true },
    },
    {
      name: 'phone',
      testIgnore: [...whole.desktop, ...whole.tablet],
      grepInvert: notFor.phone,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
  ],
});
