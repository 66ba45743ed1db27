import { describe, expect, it } from 'vitest';
import { saveSite } from '../../../src/site/saveSite.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { addAlternative } from '../../../src/site/edits/addAlternative.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { changeAlternative } from '../../../src/site/edits/changeAlternative.ts';
import { inches } from '../../../src/units/inches.ts';
import { changed } from '../changed.ts';
import { lath } from '../lath.ts';
import { sampleSite, sampleSites } from '../sampleSites.ts';
import { straightYard } from '../straightYard.ts';

/** The same with a fence of 6 ft in bays of 8 ft for choice. */
const choice = (() => {
  const site = openSite(straightYard);
  if (!site.ok) throw new Error(site.reason);
  const spec = site.value.specs['spec:five-foot'];
  if (spec === undefined) throw new Error('expected a spec');
  const high = { ...spec, fabricHeight: inches(72), maxBay: inches(96) };
  const carried = addAlternative(addSpec(site.value, 'spec:high', high), 'Higher');
  const instead = { 'spec:five-foot': 'spec:high' } as const;
  return saveSite(changeAlternative(carried, 'alternative:1', { instead }));
})();

const files = { choice, straightYard };

describe('lath compare', () => {
  it('[K26] a yard and its alternative, with what differs on their load lists', async () => {
    const said = await lath(['compare', 'choice'], files);
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toMatch(/^What +As drawn +Higher\n/);
    // 54 ft in bays of 10 ft and of 8 ft
    expect(said.out).toMatch(/^Posts +7 +8 \(\+1\)$/m);
    expect(said.out).toMatch(/^Fabric, 6'-0" high.* 0" +54'-0" \(\+54'-0"\)$/m);
    expect(said.out).not.toContain('Tension wire');
    expect(said.out).not.toContain('Total');
  });

  it('[K26] several files side by side, each as it is drawn', async () => {
    const said = await lath(['compare', 'straightYard', 'choice', '-'], {
      ...files,
      '-': sampleSite('sports-court'),
    });
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toMatch(/^What +straightYard +choice +standard input\n/);
    expect(said.out).toMatch(/^Posts +7 +7 +39 \(\+32\)$/m);
    const alike = await lath(['compare', 'straightYard', 'choice'], files);
    expect(alike.out).toContain('the load lists do not differ');
  });

  it.each(sampleSites)('[K26] $name is told whether it has alternatives or not', async (sample) => {
    const said = await lath(['compare', 'yard'], { yard: sample.text });
    expect(said).toMatchObject({ code: 0, err: '' });
    const site = openSite(sample.text);
    if (!site.ok) throw new Error(site.reason);
    const names = Object.values(site.value.alternatives).map(({ label }) => label);
    for (const name of names) expect(said.out).toContain(name);
    expect(said.out.includes('no alternatives to compare it with')).toBe(names.length === 0);
  });

  it('[K26] --json prints it with its working, --csv for a spreadsheet', async () => {
    const json = JSON.parse((await lath(['compare', 'choice', '--json'], files)).out) as {
      readonly columns: readonly Record<string, unknown>[];
      readonly lines: readonly { readonly code: string; readonly counts: readonly number[] }[];
    };
    expect(json.columns).toMatchObject([
      { label: '', alternative: null, posts: 7, more: null, priced: null },
      { label: 'Higher', alternative: 'alternative:1', posts: 8, more: { posts: 1, fence: 0 } },
    ]);
    expect(json.lines.find(({ code }) => code.startsWith('fabric 72in'))?.counts).toEqual([0, 648]);
    const csv = await lath(['compare', 'choice', '--csv'], files);
    const rows = csv.out.split('\r\n');
    expect(rows[0]).toBe('Table,What,As drawn,Higher');
    expect(rows[2]).toBe('Side by side,Posts,7,8 (+1)');
    expect(rows.filter((row) => row.startsWith('Where the load lists differ,'))).toHaveLength(
      json.lines.length,
    );
  });

  it('[K27] prices each, and names what it could not take and what has no price', async () => {
    const prices =
      'Item,Unit,Price,Currency\ntension-band 2.375,each,0.85,USD\nhog-ring,pack,"7,00",USD\nhour,hour,60,USD\n';
    const all = { ...files, 'prices.csv': prices };
    const said = await lath(['compare', 'choice', '--prices', 'prices.csv'], all);
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toContain('prices.csv: line 3: Price: expected a point before the decimals');
    // six bands and ten
    expect(said.out).toMatch(
      /^Materials +5\.10 without \d+ items +8\.50 without \d+ items \(\+3\.40 as far as priced\)$/m,
    );
    // one more hole takes half an hour, two braces 0.3 each
    expect(said.out).toMatch(/^Labour +355\.80 +421\.80 \(\+66\.00\)$/m);
    expect(said.out).toMatch(/^Margin +none in the list +none in the list$/m);
    expect(said.out).toMatch(/^As drawn: no price for .*tension-bar 48in.*: nothing of these/m);
    expect(said.out).toMatch(/^Higher: no price for .*tension-bar 72in.*: nothing of these/m);
    const json = await lath(['compare', 'choice', '--prices', 'prices.csv', '--json'], all);
    expect(JSON.parse(json.out)).toMatchObject({
      columns: [
        { costs: { materials: { amount: '5.10' }, margin: null } },
        { more: { costs: { materials: { amount: '3.40' }, labour: { amount: '66.00' } } } },
      ],
      refused: [{ line: 3 }],
    });
  });

  it('[K26] stops where the yard as drawn does', async () => {
    const wide = changed({ 'gates/gate:drive/leaves/leaf:drive-1/widths/top': 240 });
    const all = { ...files, wide };
    expect((await lath(['compare', 'wide'], all)).code).toBe(1);
    expect((await lath(['compare', 'straightYard', 'wide'], all)).code).toBe(1);

    // posts that leave no room for a gate, in an alternative alone
    const yard = openSite(sampleSite('back-yard'));
    if (!yard.ok) throw new Error(yard.reason);
    const spec = yard.value.specs['spec:five-foot'];
    if (spec === undefined) throw new Error('expected a spec');
    const post = { ...spec.gatePost, od: inches(600) };
    const thick = addSpec(yard.value, 'spec:thick', { ...spec, gatePost: post });
    const named = changeAlternative(addAlternative(thick, 'Thick'), 'alternative:1', {
      instead: { 'spec:five-foot': 'spec:thick' },
    });
    const said = await lath(['compare', '-'], { '-': saveSite(named) });
    expect(said.out).toMatch(/^Flags: stop +0 +(\d+) \(\+\1\)$/m);
    expect(said.code).toBe(0);
  });

  it('[K2] bad input is one line', async () => {
    const says = async (...args: string[]): Promise<string> => {
      const said = await lath(['compare', ...args], { ...files, bad: '{' });
      expect(said).toMatchObject({ code: 2, out: '' });
      expect(said.err.trimEnd()).not.toContain('\n');
      return said.err;
    };
    expect(await says()).toContain('SITE is missing: expected lath compare SITE [OTHER …]');
    expect(await says('choice', '--csv', '--json')).toContain('expected one of them');
    expect(await says('choice', 'none')).toContain('none: no such file');
    expect(await says('bad', 'choice')).toMatch(/^bad: /);
    expect(await says('choice', '--prices', 'none.csv')).toContain('none.csv: no such file');
    expect(await says('choice', '--prices', 'bad')).toMatch(/^bad: line 1: expected a header/);
  });
});
