import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';

const tabs = ['Yard', 'Openings', 'Load list', 'Crew sheet'];

test('axe finds nothing on any screen, and no request leaves the machine', async ({ page }) => {
  const outside: string[] = [];
  page.on('request', (request) => {
    if (!new URL(request.url()).host.startsWith('localhost')) outside.push(request.url());
  });
  await page.goto('/');
  for (const tab of tabs) {
    await page.getByRole('link', { name: tab }).click();
    await expect(page.locator('main')).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [tab, id, nodes[0]?.html])).toEqual([]);
  }
  expect(outside.filter((url) => !url.startsWith('data:') && !url.startsWith('blob:'))).toEqual([]);
});
