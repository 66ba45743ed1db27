import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';

const tabs = ['Yard', 'Openings', 'Load list', 'Crew sheet'];

test('axe finds nothing on any screen', async ({ page }) => {
  await page.goto('/');
  for (const tab of tabs) {
    await page.getByRole('link', { name: tab }).click();
    await expect(page.locator('main')).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [tab, id, nodes[0]?.html])).toEqual([]);
  }
});
