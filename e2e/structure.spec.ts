import { expect, test } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { yardPage } from './yardPage.ts';

test('wind and frost are told once, flagged at their place, one accepted with a reason, and printed', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard');
  const pull = page.getByRole('button', { name: /^Pull up/ });
  await expect(
    page.getByRole('button', { name: /^(?:Pull up|Put down|Show all)/ }).first(),
  ).toBeVisible();
  if (await pull.isVisible()) await pull.click();
  await page.getByText('Ground and wind', { exact: true }).click();
  const speed = page.getByLabel('Basic wind speed, mph');
  await speed.fill('fast');
  await speed.press('Enter');
  await expect(page.getByRole('alert')).toHaveText(
    'Wind speed “fast”: expected 20 to 300 mph, or nothing',
  );
  await speed.fill('150');
  await speed.press('Enter');
  const frost = page.getByLabel('Frost goes down to');
  await frost.fill('36');
  await frost.press('Enter');
  const flags = page.getByRole('region', { name: 'Flags' });
  const bends = flags.getByRole('button', { name: /bend by \d+ % of what/ });
  await expect(bends).toHaveCount(1);
  await page.getByLabel('No bay longer than line posts bear this wind').check();
  await expect(bends).toHaveCount(0);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(bends).toHaveCount(1);

  const frosty = flags.getByRole('listitem').filter({ hasText: 'frost asks for' });
  await frosty.getByRole('button', { name: 'Accept with a reason' }).click();
  await frosty.getByRole('button', { name: 'Accept', exact: true }).click();
  await expect(frosty.getByRole('alert')).toContainText('Expected a reason and initials');
  await frosty.getByLabel('Reason').fill('Rock at two feet');
  await frosty.getByLabel('Initials').fill('AB');
  await frosty.getByLabel('Initials').press('Enter');
  await frosty.getByRole('button', { name: 'Accept', exact: true }).click();
  await expect(frosty).toContainText(/Accepted by AB, .*: Rock at two feet/);

  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  const words = (await textsOf(file)).flat().join(' ');
  expect(words).toContain('Posts, compared');
  expect(words).toMatch(/Accepted by AB, [\d-]+: Rock at two feet/);
  expect(words).toContain('licensed professional');
});

test('a pool yard has each of its flags once, at its place, and one that is accepted is printed', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard');
  await expect(yard.pad).toBeVisible();
  const pull = page.getByRole('button', { name: /^Pull up/ });
  if (await pull.isVisible()) await pull.click();
  const flags = page.getByRole('region', { name: 'Flags' });
  await page.getByText('Ground and wind', { exact: true }).click();
  await page.getByLabel('Frost goes down to').fill('36');
  await page.getByLabel('Frost goes down to').press('Enter');
  const frosty = flags.getByRole('button', { name: /frost asks for/ });
  await flags.getByRole('button', { name: /^Dig every hole of this build 3'-6" deep/ }).click();
  await expect(frosty).toHaveCount(0);
  await page.getByRole('button', { name: /^Undo/ }).click();
  // a flag leads to what it stands on: here the fence line
  await frosty.click();
  if (await pull.isVisible()) await pull.click();
  await page.getByLabel('Is the barrier round a pool').check();
  await page.getByRole('button', { name: 'Let go' }).click();
  if (await pull.isVisible()) await pull.click();
  await expect(
    flags.getByText(/mesh of 2".*CPSC Publication 362.*ISPSC 305\.2; from memory/),
  ).toHaveCount(1);
  await expect(flags.getByText(/does not close by itself/)).toHaveCount(2);
  await expect(flags.getByText(/nobody has said how high the latch/)).toHaveCount(2);
  const mesh = flags.getByRole('listitem').filter({ hasText: 'has a mesh of' });
  await mesh.getByRole('button', { name: 'Accept with a reason' }).click();
  await mesh.getByLabel('Reason').fill('Slats come in spring');
  await mesh.getByLabel('Initials').fill('CD');
  await mesh.getByLabel('Initials').press('Enter');
  await mesh.getByRole('button', { name: 'Accept', exact: true }).click();
  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  expect((await textsOf(file)).flat().join(' ')).toMatch(
    /Accepted by CD, [\d-]+: Slats come in spring/,
  );
});

test('pipes are chosen by what they measure, a thin gate post is mended, and an accessible gate is looked at', async ({
  page,
}) => {
  const yard = yardPage(page);
  await page.goto('/?sample=back-yard#openings');
  const drive = page.getByRole('article', { name: 'Drive gate' });
  await drive.getByText('Leaves and hardware').click();
  await drive
    .getByLabel('Gate posts', { exact: true })
    .selectOption({ label: '2 schedule 40: 1.900" OD, 0.145" wall' });
  await expect(drive.getByText(/1\.900" outside, carries a leaf of/).first()).toBeVisible();
  await drive.getByText('What passes, latch, motor').click();
  await drive.getByLabel('Has to let pass').selectOption('People in wheelchairs');
  const sill = drive.getByLabel('Sill in the opening stands up');
  await sill.fill('high');
  await sill.press('Enter');
  await expect(drive.getByRole('alert')).toContainText('“high”');
  await sill.fill('1');
  await sill.press('Enter');
  await expect(drive.getByText(/its sill stands up 1"/)).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(drive.getByText(/its sill stands up/)).toHaveCount(0);
  await page.getByRole('button', { name: /^Redo/ }).click();

  await yard.show('Yard');
  await yard.onCard(async () => {
    const flags = page.getByRole('region', { name: 'Flags' });
    const thin = flags.getByRole('listitem').filter({ hasText: 'for which the table has 2.875"' });
    await expect(thin).toHaveCount(2);
    await thin.first().getByRole('button', { name: 'Gate posts of 3 schedule 40' }).click();
    await expect(thin).toHaveCount(0);
  });

  await yard.show('Crew sheet');
  const file = await yard.download(() =>
    page.getByRole('button', { name: 'Download PDF' }).click(),
  );
  const words = (await textsOf(file)).flat().join(' ');
  expect(words).toMatch(/its sill stands up 1": on an accessible route expected 1\/2" at most/);
  expect(words).toContain('terminals braced to the next post');
});
