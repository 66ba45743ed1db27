import { defineConfig } from '@playwright/test';
import { browserFlags, findChromium } from './findTool.ts';

const port = 4173;

export default defineConfig({
  testDir: '.',
  outputDir: '../test-results',
  fullyParallel: true,
  workers: 2,
  timeout: 120_000,
  reporter: [['list']],
  use: {
    baseURL: `http://localhost:${port}`,
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
    { name: 'desktop', use: { viewport: { width: 1440, height: 900 } } },
    { name: 'tablet', use: { viewport: { width: 1024, height: 768 }, hasTouch: true } },
    {
      name: 'phone',
      use: { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true },
    },
  ],
});
