import { readFileSync } from 'node:fs';
import { expect, test, type Locator, type Page } from '@playwright/test';
import { textsOf } from './readPdf.ts';
import { noFindings, overflow } from './findings.ts';
import { yardPage } from './yardPage.ts';

/** The section of what lies in the yard, by its written names. */
const yardOf = (page: Page) => {
  const section = page.getByRole('region', { name: 'Left over in the yard' });
  const form = section.getByRole('form', { name: 'One more length' });
  return {
    section,
    form,
    rows: section.getByRole('listitem'),
    rail: page.getByRole('region', { name: /^Rail, 1-5\/8 high strength.*:/ }),
    /** What the line of the load list says is bought. */
    bought: (part: string, item: RegExp): Locator =>
      page.getByRole('region', { name: part, exact: true }).getByRole('row', { name: item }),
    add: async (fields: Readonly<Record<string, string>>): Promise<void> => {
      for (const [label, text] of Object.entries(fields))
        await form.getByLabel(label, { exact: true }).fill(text);
      await form.getByRole('button', { name: 'Add it' }).click();
    },
  };
};

const enter = async (field: Locator, text: string): Promise<void> => {
  await field.fill(text);
  await field.press('Enter');
};

const undo = (page: Page): Promise<void> => page.getByRole('button', { name: /^Undo/ }).click();

test('lengths that lie in the yard are added, cut first, changed, taken off again and printed @desk-phone', async ({
  page,
}) => {
  const yard = yardPage(page);
  const { section, form, rows, rail, bought, add } = yardOf(page);
  await page.goto('/?sample=sports-court#load');
  await expect(section).toContainText('Nothing is said to lie in the yard for this job');
  await expect(rail).toContainText('22 sticks, proven the fewest');
  await noFindings(page);

  // what cannot be is said at its field, and nothing typed is lost
  await add({ Length: 'long', 'How many': 'few' });
  await expect(form.getByRole('alert')).toHaveText([
    /^Length: “long”/,
    'How many “few”: expected a whole number from 1 to 1000',
  ]);
  await expect(form.getByLabel('Length', { exact: true })).toHaveAttribute('aria-invalid', 'true');
  await expect(form.getByLabel('Length', { exact: true })).toHaveValue('long');
  await noFindings(page);
  await add({ Length: '0', 'How many': '2' });
  await expect(form.getByRole('alert')).toHaveText(/^offcuts › offcut:1 › length: expected more/);
  await expect(rows).toHaveCount(0);

  await form
    .getByLabel('Left over from')
    .selectOption({ label: 'Rail, 1-5/8 high strength, 1.660" OD' });
  await add({ Length: `10'`, 'How many': '2' });
  await expect(form.getByRole('alert')).toHaveCount(0);
  await expect(rows).toHaveCount(1);
  // the next one can be typed at once
  await expect(form.getByLabel('Length', { exact: true })).toBeFocused();
  await expect(form.getByLabel('Length', { exact: true })).toHaveValue('');
  await expect(rail).toContainText('21 sticks, proven the fewest, and 2 from the yard');
  await expect(rail.getByRole('row', { name: /the yard, 10'-0"/ })).not.toHaveCount(0);
  const line = bought('Rails', /^Rail, 1-5\/8/);
  await expect(line).toContainText(`21 × stick of 21'-0"`);
  await expect(line).toContainText('and 2 lengths from the yard');
  await noFindings(page);
  expect(await overflow(page)).toBeLessThanOrEqual(0);

  // enough of it, and nothing is bought
  const row = rows.first();
  await enter(row.getByLabel('Length', { exact: true }), `21'`);
  await enter(row.getByLabel('How many'), '1.5');
  await expect(row.getByRole('alert')).toHaveText(
    'How many “1.5”: expected a whole number from 1 to 1000',
  );
  await enter(row.getByLabel('How many'), '40');
  await expect(row.getByRole('alert')).toHaveCount(0);
  await expect(line).toContainText(/none, 2[2-4] lengths from the yard/);
  await expect(rail).toContainText(/none bought, 2[2-4] from the yard/);
  await undo(page);
  await expect(row.getByLabel('How many')).toHaveValue('2');
  await expect(line).toContainText('and 2 lengths from the yard');

  // a roll is a length too
  await row.getByLabel('Left over from').selectOption('fabric 120in-2-0.148');
  await enter(row.getByLabel('Length', { exact: true }), `44'`);
  await enter(row.getByLabel('How many'), '1');
  await expect(bought('Between the posts', /^Fabric/)).toContainText('6 × roll');
  await expect(bought('Between the posts', /^Fabric/)).toContainText('and 1 length from the yard');

  const cuts = await yard.download(() =>
    page.getByRole('button', { name: 'Download cut tickets' }).click(),
  );
  expect(readFileSync(cuts, 'utf8')).toContain(`"the yard, 44'-0"""`);
  expect((await yard.saved()).offcuts).toEqual({
    'offcut:1': { of: 'fabric 120in-2-0.148', length: 528, count: 1 },
  });

  await yard.show('Crew sheet');
  const pdf = await yard.download(() => page.getByRole('button', { name: 'Download PDF' }).click());
  const words = (await textsOf(pdf)).flat().join(' ');
  expect(words).toMatch(/and 1 length from the\s+yard/);
  expect(words).toContain(`the yard, 44'-0"`);

  await yard.show('Load list');
  await row.getByRole('button', { name: /^Remove: 1 of 44'-0", Fabric/ }).click();
  await expect(rows).toHaveCount(0);
  await expect(bought('Between the posts', /^Fabric/)).toContainText('7 × roll');
  await undo(page);
  await expect(rows).toHaveCount(1);
});

test('what is not of the job is told in one line and kept @desk', async ({ page }) => {
  const yard = yardPage(page);
  const { section, form, rows, add } = yardOf(page);
  await page.goto('/?sample=sports-court#load');
  await add({ Length: `6'`, 'How many': '3' });
  await expect(section).not.toContainText('Not of this job');
  await yard.show('Yard');
  // without its fence the yard has no tickets
  const before = await yard.saved();
  const [of] = Object.values(before.offcuts).map((one) => one.of);
  const file = {
    name: 'no-fence.site.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...before, lines: {}, gates: {}, pins: {} })),
  };
  await page.getByRole('button', { name: 'Job & file' }).click();
  await page.getByLabel('Site file to open').setInputFiles(file);
  await page.getByRole('button', { name: 'Open as a job of its own' }).click();
  await yard.show('Load list');
  await expect(section.getByText(`Not of this job, and kept: ${of}`)).toBeVisible();
  await expect(form).toHaveCount(0);
  await expect(rows).toHaveCount(1);
  await noFindings(page);
  expect(Object.values((await yard.saved()).offcuts)).toEqual([{ of, length: 72, count: 3 }]);
});

test('a company keeps how it counts for new sites, can forget it, and a site can go back @desk', async ({
  page,
}) => {
  await page.goto('/?sample=sports-court#load');
  const stick = page.getByLabel('A stick of rail', { exact: true });
  const open = () => page.getByText('How this company counts').click();
  const keep = page.getByRole('button', { name: 'Keep these for new sites' });
  const back = page.getByRole('button', { name: 'Back to what the trade counts' });
  const forget = page.getByRole('button', { name: 'Forget what is kept' });
  const startNew = async () => {
    await page.getByRole('button', { name: 'Job & file' }).click();
    await page.getByRole('button', { name: 'New yard', exact: true }).click();
  };
  await open();
  await expect(page.getByText('New sites begin with what the trade counts.')).toBeVisible();
  await expect(forget).toHaveCount(0);
  await enter(stick, `20'`);
  await keep.click();
  await expect(page.getByText('New sites begin with what this site counts.')).toBeVisible();
  await expect(keep).toBeDisabled();
  await noFindings(page);

  // the site goes back, and that is undone like any edit; what is kept stays
  await back.click();
  await expect(stick).toHaveValue(`21'-0"`);
  await expect(page.getByText('New sites begin with other numbers')).toBeVisible();
  await undo(page);
  await expect(stick).toHaveValue(`20'-0"`);
  await back.click();

  await page.reload();
  await open();
  await expect(stick).toHaveValue(`21'-0"`);
  await startNew();
  await expect(stick).toHaveValue(`20'-0"`);
  await forget.click();
  await expect(page.getByText('New sites begin with what the trade counts.')).toBeVisible();
  await expect(stick).toHaveValue(`20'-0"`);
  await startNew();
  await expect(stick).toHaveValue(`21'-0"`);
});
