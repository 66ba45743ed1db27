import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { dxfText, entity } from '../tests/importers/dxf/dxfText.ts';
import { dropFile, pdfFile, photoFile } from './pictureFiles.ts';
import { yardPage } from './yardPage.ts';

// what the service worker fetches is listened to as well
test.use({ serviceWorkers: 'allow' });

/** Every address that a page, its workers or the service worker ask for. */
const listen = (context: BrowserContext): string[] => {
  const asked: string[] = [];
  context.on('request', (request) => asked.push(request.url()));
  return asked;
};

/** What the content policy refuses, and what else a page complains of. */
const complaints = async (page: Page): Promise<string[]> => {
  const heard: string[] = [];
  await page.exposeFunction('hear', (said: string) => heard.push(said));
  await page.addInitScript(() => {
    const { hear } = window as unknown as { hear: (said: string) => void };
    document.addEventListener('securitypolicyviolation', (event) =>
      hear(`refused: ${event.violatedDirective} ${event.blockedURI}`),
    );
  });
  page.on('console', (message) => {
    if (message.type() === 'error') heard.push(message.text());
  });
  page.on('pageerror', (error) => heard.push(String(error)));
  return heard;
};

test('a walk through all of it asks its own address alone, and is refused nothing', async ({
  page,
  context,
  baseURL,
}) => {
  const asked = listen(context);
  const heard = await complaints(page);
  await context.grantPermissions(['geolocation']);
  await context.setGeolocation({ latitude: 41.2, longitude: -85.1, accuracy: 6 });
  const yard = yardPage(page);
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
  await page.goto('/');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  for (const tab of ['Openings', 'Load list', 'Crew sheet']) {
    await yard.show(tab);
    await expect(page.getByRole('heading', { name: tab, level: 1 })).toBeAttached();
  }
  const pdf = await yard.download(() => press('Download PDF'));
  await yard.download(() => press('Download PNG of page 1 Cover'));
  await yard.download(() => press('Download SVG of page 1 Cover'));
  await page.getByText('For other programs and a total station').click();
  for (const what of ['DXF', 'stakes as CSV', 'table as CSV']) {
    await yard.download(() => press(`Download ${what}`));
  }

  await yard.show('Yard');
  await yard.take('Walk');
  await expect(page.getByRole('region', { name: 'Walk' })).toContainText('You are here');
  await yard.take('Select');
  await dropFile(page, await photoFile(page, { name: 'photo.jpg', width: 300, height: 200 }));
  await expect(page.getByText('photo.jpg: under the drawing')).toBeVisible();
  await dropFile(page, pdfFile('lot.pdf', ['Lot 7']));
  await expect(page.getByText('lot.pdf: under the drawing')).toBeVisible();
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page
    .getByLabel('Site file to open')
    .setInputFiles({ name: 'yard.pdf', mimeType: 'application/pdf', buffer: readFileSync(pdf) });
  // it is a copy of the job on the pad
  await press('Open as a job of its own');
  await expect(page.getByRole('dialog')).toBeHidden();
  await page.getByRole('button', { name: 'Job & file' }).click();
  const dxf = dxfText({ units: 1, entities: [entity('POINT', 'WALLS', [10, 0], [20, 0])] });
  await page
    .getByLabel('File to bring in')
    .setInputFiles({ name: 'plan.dxf', mimeType: 'text/plain', buffer: Buffer.from(dxf) });
  await expect(page.getByRole('dialog', { name: 'Bring in' })).toContainText('WALLS');

  const outside = asked.filter(
    (url) => !url.startsWith(`${baseURL}/`) && !url.startsWith(`blob:${baseURL}/`),
  );
  expect(outside).toEqual([]);
  expect(heard).toEqual([]);
  // what is listened to is heard: pages, workers, and what the service worker keeps
  for (const part of [/index-.*js$/, /sheetWorker/, /index_bg.*wasm$/, /hillside/]) {
    expect(
      asked.some((url) => part.test(url)),
      String(part),
    ).toBe(true);
  }
});

test('a script that is written into the page does not run, and nothing else can be asked', async ({
  page,
}) => {
  const heard = await complaints(page);
  await page.goto('/');
  const ran = await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'window.ran = true';
    document.body.append(script);
    return 'ran' in window;
  });
  expect(ran).toBe(false);
  // a name that is kept for examples and never resolves: RFC 2606
  const got = await page.evaluate(() =>
    fetch('https://yard.example/').then(String, () => 'refused'),
  );
  expect(got).toBe('refused');
  // by the page's own policy and by the server's
  const refused = () => [...new Set(heard.filter((said) => said.startsWith('refused:')))];
  await expect
    .poll(refused)
    .toEqual(['refused: script-src-elem inline', 'refused: connect-src https://yard.example/']);
});

test('every part is served with the policy, also the page by itself', async ({ request }) => {
  const served = await request.get('/index.html');
  const headers = served.headers();
  expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
  expect(headers['referrer-policy']).toBe('no-referrer');
  expect(headers['x-content-type-options']).toBe('nosniff');
  const [worker] = /assets\/index-[^"]+\.js/.exec(await served.text()) ?? [''];
  expect((await request.get(`/${worker}`)).headers()['content-security-policy']).toContain(
    "default-src 'none'",
  );
  const meta = /<meta http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(
    await served.text(),
  );
  const policy = (meta?.[1] ?? '').replaceAll('&#39;', "'");
  expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
  expect(policy).not.toMatch(/unsafe-inline|'unsafe-eval'|https?:|\*/);
});
