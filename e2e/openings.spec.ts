import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

test('a hinge swapped after the sign-off voids it, and no order goes out unmarked', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard#openings');
  const gates = page.getByRole('navigation', { name: /^Gates/ });
  const drive = page.getByRole('article', { name: 'Drive gate' });
  const walk = page.getByRole('article', { name: 'Walk gate' });
  const sign = (gate: typeof drive) => gate.getByRole('button', { name: /^Sign (off|again)$/ });

  await sign(drive).click();
  await expect(drive.getByRole('alert')).toContainText('Initials: expected');
  await drive.getByLabel('Initials').fill('AB');
  await sign(drive).click();
  await sign(walk).click();
  await expect(drive.getByRole('group', { name: 'Sign-off' })).toContainText('Signed off by AB');
  await expect(gates.getByRole('button', { name: 'Signed' })).toHaveCount(2);

  await drive.getByRole('button', { name: 'Show in the yard' }).click();
  const heavy = 'Heavy hinge, 180 degree or strap';
  await yard.onCard(() =>
    page
      .locator('select', { has: page.locator('option', { hasText: heavy }) })
      .first()
      .selectOption({ label: heavy }),
  );

  await yard.show('Openings');
  const found = drive.getByRole('group', { name: 'Sign-off' });
  await expect(found).toContainText('Void: signed by AB');
  // a hinge planned at 1 7/8 in went, one planned at 2 1/2 in came
  await expect(found).toContainText('Opening to hold: from 10\'-0" to 10\'-0 5/8", 5/8" more.');
  await expect(found).toContainText('hinge, planned: from 1 7/8" to 2 1/2", 5/8" more.');
  await expect(gates.getByRole('button').first()).toContainText('Void');

  const order = page.getByRole('region', { name: 'Order sheet' });
  const pdf = order.getByRole('button', { name: 'Download order PDF' });
  const csv = order.getByRole('button', { name: 'Download order CSV' });
  await pdf.click();
  await expect(order.getByRole('alert')).toContainText('found Drive gate (sign-off void)');
  await order.getByLabel('Print unsigned').check();
  const pages = await textsOf(await yard.download(() => pdf.click()));
  expect(pages.length).toBeGreaterThan(0);
  for (const texts of pages) {
    expect(texts.join('\n')).toContain('UNSIGNED: Drive gate (sign-off void)');
  }
  expect(pages.flat()).toContain(heavy);
  const rows = async () =>
    readFileSync(await yard.download(() => csv.click()), 'utf8')
      .trim()
      .split('\r\n')
      .slice(1);
  const marked = await rows();
  expect(marked.length).toBeGreaterThan(4);
  expect(marked.filter((row) => !row.endsWith(',UNSIGNED'))).toEqual([]);

  await drive.getByLabel('Initials').fill('CD');
  await sign(drive).click();
  await expect(found).toContainText('Signed off by CD');
  expect((await rows()).filter((row) => !row.endsWith(',signed'))).toEqual([]);
});
