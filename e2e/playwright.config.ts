import { defineConfig } from '@playwright/test';
import { browserFlags, findChromium } from './findChromium.ts';

const port = 4173;

/** The crew types what was set on a phone; fingers alone are those on a phone. */
const onPhones = ['asSet.spec.ts', 'touchYard.spec.ts'];
/** What measures this machine or reads what was built is the same for every screen. */
const once = [
  'crash.spec.ts',
  'underlaySpeed.spec.ts',
  'claims.spec.ts',
  'offline.spec.ts',
  'ownAddress.spec.ts',
];

/**
 * A test with a tag is for those screens alone: `@desk`, `@phone`, `@desk-phone` for both. Every other one is
 * run on all three.
 */
const notFor = {
  desktop: /@phone\b/,
  tablet: /@(desk|phone)\b/,
  phone: /@desk(?!-)/,
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
      testIgnore: onPhones,
      grepInvert: notFor.desktop,
      use: { viewport: { width: 1440, height: 900 } },
    },
    {
      name: 'tablet',
      testIgnore: [...onPhones, ...once],
      grepInvert: notFor.tablet,
      use: { viewport: { width: 1024, height: 768 }, hasTouch: true },
    },
    {
      name: 'phone',
      testIgnore: once,
      grepInvert: notFor.phone,
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
  ],
});
