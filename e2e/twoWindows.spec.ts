import { expect, test, type Page } from '@playwright/test';
import { yardPage } from './yardPage.ts';

const renamed = async (page: Page, name: string): Promise<void> => {
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByLabel('Job name').fill(name);
  await page.keyboard.press('Tab');
  await page.getByRole('button', { name: 'Done' }).click();
};

test('what is done in one window appears in the other, both ways, and undo brings it back', async ({
  page,
  context,
}) => {
  const here = yardPage(page);
  await page.goto('/');
  await renamed(page, 'Two windows');
  await expect(page.locator('html')).toHaveAttribute('data-kept-all', 'true');
  const other = await context.newPage();
  await other.goto('/index.html');
  const there = yardPage(other);
  expect(await there.saved()).toEqual(await here.saved());
  await renamed(other, 'From the other');
  await expect(page).toHaveTitle(/^From the other/);
  await renamed(page, 'From the first');
  await expect(other).toHaveTitle(/^From the first/);
  await other.getByRole('button', { name: /^Undo/ }).click();
  await expect(page).toHaveTitle(/^From the other/);
  await other.reload();
  expect((await yardPage(other).saved()).job.name).toBe('From the other');
});
