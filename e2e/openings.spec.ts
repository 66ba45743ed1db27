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

test('hardware that cannot be is refused at its field, and the order says what does not fit @desk', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard#openings');
  const drive = page.getByRole('article', { name: 'Drive gate' });
  await drive.getByText('Leaves and hardware', { exact: true }).click();
  const leaf = drive.getByRole('group', { name: 'Leaf 1', exact: true });
  const hinges = leaf.getByLabel('Hinges', { exact: true });
  await leaf.getByText('Hinges: sizes and fit').click();
  const fits = leaf.getByLabel('Fits posts from');
  await fits.fill('4');
  await fits.press('Enter');
  await expect(drive.getByText('Hardware fit: does not fit at 2 of')).toBeVisible();
  await expect(drive.getByRole('region', { name: 'Hardware fit, Drive gate' })).toContainText(
    'does not fit',
  );

  // another hinge is taken, and the first one is not taken back
  const misfit = await hinges.inputValue();
  await hinges.selectOption('Bulldog hinge');
  await expect(hinges).not.toHaveValue(misfit);
  const good = await hinges.inputValue();
  await hinges.selectOption(misfit);
  await expect(leaf.getByRole('alert')).toContainText(
    'fits posts of 4.000" OD: the post of leaf 1 is 2.875", expected a hinge that fits it',
  );
  await expect(hinges).toHaveValue(good);

  await drive.getByText('Drop rod or latch: sizes and fit').click();
  const gap = drive.getByLabel('Plan gap', { exact: true });
  const before = await yard.saved();
  for (const [typed, says] of [
    ['9', 'is more than catches to'],
    ['0', 'Plan gap: expected more than 0, found 0"'],
    ['-2', 'Plan gap: expected more than 0, found -2"'],
  ] as const) {
    await gap.fill(typed);
    await gap.press('Enter');
    await expect(drive.getByText(says)).toBeVisible();
    await gap.press('Escape');
  }
  expect(await yard.saved()).toEqual(before);

  const order = page.getByRole('region', { name: 'Order sheet' });
  await order.getByLabel('Print unsigned').check();
  const csv = order.getByRole('button', { name: 'Download order CSV' });
  const rows = readFileSync(await yard.download(() => csv.click()), 'utf8').split('\r\n');
  const hung = rows.filter((row) => row.startsWith('Hinges,'));
  expect(hung.filter((row) => row.includes('DOES NOT FIT: the post of leaf 2 is 2.875"'))).toEqual([
    expect.stringMatching(/^Hinges,2,/),
  ]);
});

test('an opening says how well its place on the ground is known, on both its cards @desk-phone', async ({
  page,
}) => {
  await page.goto('/?sample=taped-yard#openings');
  const card = page.getByRole('article').first();
  const line = card.getByText(/^Its place on the ground is known to ±.+ by the tapes$/);
  await expect(line).toBeVisible();
  const said = await line.innerText();
  await card.getByRole('button', { name: 'Show in the yard' }).click();
  await yardPage(page).onCard(() =>
    expect(page.getByRole('region', { name: 'Gate' }).getByText(said)).toBeVisible(),
  );
});
