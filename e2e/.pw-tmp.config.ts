import base from '/work/main/e2e/playwright.config.ts';
const { webServer: _, ...rest } = base as any;
export default { ...rest, testDir: '/work/main/e2e', outputDir: '/tmp/pw-out', use: { ...rest.use, baseURL: 'http://localhost:4391' }, workers: 1 };
