import { describe, expect, it } from 'vitest';
import type { Load } from '../../../src/engine/load/load.ts';
import type { LoadLine } from '../../../src/engine/loadLine.ts';
import { labourTasks } from '../../../src/trade/labour.ts';
import { changed } from '../changed.ts';
import { golden } from '../golden.ts';
import { lath } from '../lath.ts';
import { sampleSite, sampleSites } from '../sampleSites.ts';
import { straightYard } from '../straightYard.ts';

describe('lath load', () => {
  it.each(sampleSites)('[K9] $name loads what it did', async ({ name, text }) => {
    const said = await lath(['load', 'yard'], { yard: text });
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toBe(golden(`${name}/load.txt`, said.out));
  });

  it('[K9] a straightYard run of 54 ft, two ends, no gate', async () => {
    const said = await lath(['load', '-', '--json'], { '-': straightYard });
    const { lines: load } = JSON.parse(said.out) as { readonly lines: readonly LoadLine[] };
    const counts = (start: string): number[] =>
      load.flatMap(({ item, count }) => (item.startsWith(start) ? [count] : []));
    // 54 ft at 10 ft makes 6 bays: installation sheet “Chain Link Fencing, Detailed Instructions”
    // (Scribd 154728461); two terminals and 54 ft of fabric and rail follow by arithmetic
    expect(counts('Terminal post')).toEqual([2]);
    expect(counts('Line post')).toEqual([5]);
    expect(counts('Fabric')).toEqual([54 * 12]);
    // less half of each post
    expect(counts('Rail,')).toEqual([54 * 12 - 2.375]);
    expect(counts('Gate')).toEqual([]);
  });

  it('[K9] --csv prints the same rows for a spreadsheet', async () => {
    const files = { '-': sampleSite('sports-court') };
    const csv = await lath(['load', '-', '--csv'], files);
    const { lines: load } = JSON.parse((await lath(['load', '-', '--json'], files)).out) as {
      readonly lines: readonly LoadLine[];
    };
    const lines = csv.out.split('\r\n');
    expect(lines[0]).toMatch(/^List,Item,Needed,Each,Bought as,/);
    expect(lines.at(-1)).toBe('');
    expect(lines.length).toBe(load.length + 2);
    load.forEach(({ item }, n) => expect(lines[n + 1]).toContain(item.replaceAll('"', '""')));
  });

  it('[K9] --cuts prints a ticket for every pipe and fabric, stick by stick', async () => {
    const said = await lath(['load', '-', '--cuts'], { '-': straightYard });
    expect(said.out).toMatch(/Rail, .*: 3 sticks, proven the fewest, 2 joints/);
    expect(said.out).toMatch(/Fabric, 4'-0" high, .*: 2 rolls, proven the fewest/);
    const csv = await lath(['load', '-', '--cuts', '--csv'], { '-': straightYard });
    expect(csv.out.split('\r\n')[0]).toBe('Cut of,No.,From,"Cut, in this order",Left over');
  });

  it('[K34] tells what comes from the yard, and --cuts what is cut from it and left of it', async () => {
    const told = await lath(['load', '-', '--json'], { '-': straightYard });
    const { tickets } = JSON.parse(told.out) as Load;
    const code = tickets.find(({ kind }) => kind === 'rail')?.code;
    const site = JSON.parse(straightYard) as Record<string, unknown>;
    // 645 5/8 in of rail are two sticks of 21 ft and 141 5/8 in, which 12 ft hold
    const offcuts = { 'offcut:1': { of: code, length: 144, count: 1 } };
    const files = { '-': JSON.stringify({ ...site, offcuts }) };
    const list = await lath(['load', '-'], files);
    expect(list.out).toMatch(/^Rail, .* 2 × stick of 21'-0", and 1 length from the yard /m);
    const cuts = await lath(['load', '-', '--cuts'], files);
    expect(cuts.out).toMatch(
      /Rail, .*: 2 sticks, proven the fewest, and 1 from the yard, 2 joints/,
    );
    expect(cuts.out).toMatch(/the yard, 12'-0" +11'-9 5\/8" .*top rail +2 1\/4"/);
    const csv = await lath(['load', '-', '--cuts', '--csv'], files);
    expect(csv.out).toMatch(/,1,"the yard, 12'-0""",/);
    const none = { 'offcut:1': { of: code, length: 0, count: 3 } };
    const bad = await lath(['load', '-'], { '-': JSON.stringify({ ...site, offcuts: none }) });
    expect(bad).toMatchObject({ code: 2, out: '' });
    expect(bad.err).toContain('offcuts › offcut:1 › length: expected more than 0, found 0');
  });

  it('[K25] prices the list, and names what it could not take and what has no price', async () => {
    const prices =
      'Item,Unit,Price,Currency\ntension-band 2.375,each,0.85,USD\nhog-ring,pack,"7,00",USD\nhour,hour,60,USD\n';
    const files = { '-': straightYard, 'prices.csv': prices };
    const said = await lath(['load', '-', '--prices', 'prices.csv'], files);
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toContain('prices.csv: line 3: Price: expected a point before the decimals');
    expect(said.out).toMatch(/no price for .*hog-ring.*: nothing of these is in the total/);
    expect(said.out).toMatch(/Tension band.* 0\.85 +5\.10/);
    const told = await lath(['load', '-', '--prices', 'prices.csv', '--json'], files);
    expect(JSON.parse(told.out)).toMatchObject({ currency: 'USD', materials: '5.10' });
    const none = await lath(['load', '-', '--prices', 'other.csv'], files);
    expect(none.code).toBe(2);
  });

  it('[K30] prints with what hours each task was reckoned, and whose they are', async () => {
    const list = 'Item,Unit,Price\nhours hole,hours each,0.7\nhours fabric,hours,2\n';
    const files = { '-': straightYard, 'prices.csv': list };
    const said = await lath(['load', '-', '--prices', 'prices.csv'], files);
    expect(said.out).toMatch(
      /Dig, set and concrete a post: 0\.7 hours each \(price list\) +hour +4\.9 /,
    );
    expect(said.out).toMatch(/Stretch and tie fabric: 3 hours per 100 ft \(ours\)/);
    expect(said.out).toContain('prices.csv: line 3: Unit: expected hours per 100 ft or hours per');
    expect(said.out).toContain('hours: those not of the price list: hours are ours, a start');
    const told = await lath(['load', '-', '--prices', 'prices.csv', '--json'], files);
    const { tasks } = JSON.parse(told.out) as { readonly tasks: readonly unknown[] };
    expect(tasks).toContainEqual(
      expect.objectContaining({ id: 'hole', rate: { value: 0.7, from: 'price list' } }),
    );
    const own = labourTasks.map(({ id, per, hours }) =>
      [`hours ${id}`, per === 'each' ? 'hours each' : 'hours per 100 ft', hours].join(','),
    );
    const all = { ...files, 'prices.csv': ['Item,Unit,Price', ...own].join('\n') };
    const theirs = await lath(['load', '-', '--prices', 'prices.csv'], all);
    expect(theirs.out).toContain('hours: hours are those of the price list');
    expect(theirs.out).not.toContain('ours)');
  });

  it('says so when there is nothing to load', async () => {
    const bare = changed({ marks: {}, lines: {}, gates: {}, features: {} });
    expect(await lath(['load', '-'], { '-': bare })).toMatchObject({
      code: 0,
      out: 'nothing to load\n',
    });
  });

  it('[K2] takes --csv or --json, not both', async () => {
    const said = await lath(['load', '-', '--csv', '--json'], { '-': straightYard });
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toContain('expected one of them');
  });
});
