import { describe, expect, it } from 'vitest';
import { readPdf } from '../../exporters/pdf/readPdf.ts';
import { filledList } from '../../drawing/proposal/priceLists.ts';
import { sampleYards } from '../../drawing/sampleYards.ts';
import { changed } from '../changed.ts';
import { lath, type Said } from '../lath.ts';
import { sampleSite } from '../sampleSites.ts';

const yard = sampleYards.find(({ name }) => name === 'back-yard');
if (yard === undefined) throw new Error('expected the back yard');
const list = filledList(yard.site, yard.layout, () => '3.50');
const prices = [
  'Item,Unit,Price,Currency',
  ...[...list.prices].map(([code, { unit }]) => `"${code.replaceAll('"', '""')}",${unit},3.50,USD`),
].join('\n');
const files = { yard: sampleSite('back-yard'), 'prices.csv': prices };

const bytesOf = ({ files: written }: Said, name: string): Uint8Array => {
  const file = written.get(name);
  if (file === undefined || typeof file === 'string') throw new Error(`${name} holds no bytes`);
  return file;
};

describe('lath proposal', { timeout: 60_000 }, () => {
  it('[K31] writes one page as a PDF with the total that it tells, and no file in it', async () => {
    const args = ['proposal', 'yard', '--prices', 'prices.csv', '--out', 'p.pdf'];
    const said = await lath(args, files);
    expect(said).toMatchObject({ code: 0, err: '' });
    expect(said.out).toMatch(/^p\.pdf: 1 page, Letter, check value [0-9A-F]{8}\n/);
    const total = /total (USD [\d,]+\.\d\d)/.exec(said.out)?.[1] ?? 'none';
    const { pages, files: held } = await readPdf(bytesOf(said, 'p.pdf'));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.texts.join(' ')).toContain(total);
    expect(held).toEqual([]);
    const json = JSON.parse((await lath([...args, '--json'], files)).out) as {
      prices: unknown;
    };
    expect(json.prices).toMatchObject({
      price: { kind: 'told', total: total.slice(4) },
      others: [],
    });
    const priced = await lath(['load', 'yard', '--prices', 'prices.csv', '--json'], files);
    expect(JSON.parse(priced.out)).toMatchObject({ total: total.slice(4) });
  });

  it('[K31] the same site, prices and paper give the same bytes', async () => {
    const made = async (more: readonly string[]): Promise<Buffer> => {
      const args = ['proposal', 'yard', '--prices', 'prices.csv', '--out', 'p.pdf', ...more];
      return Buffer.from(bytesOf(await lath(args, files), 'p.pdf'));
    };
    const first = await made([]);
    expect(first.equals(await made([]))).toBe(true);
    expect(first.equals(await made(['--paper', 'a4']))).toBe(false);
  });

  it('[K31] as an SVG, on other paper, lying wide', async () => {
    const args = ['--out', 'p.svg', '--paper', 'a4', '--way', 'landscape'];
    const said = await lath(['proposal', 'yard', ...args], files);
    const svg = String(said.files.get('p.svg'));
    expect(svg).toContain('The price is still to be worked out.');
    expect(svg).toContain('width="11.6929in" height="8.2677in"');
  });

  it('[K31] tells what is missing for a total, and does not print it on the page', async () => {
    const none = await lath(['proposal', 'yard', '--out', 'p.svg'], files);
    expect(none.out).toContain('no total: what is missing is\n    a price list');
    const short = {
      ...files,
      'prices.csv': prices
        .replace(/\n"hog-ring".*/, '')
        .replace('"tax",percent,3.50', '"tax",percent,"3,5"'),
    };
    const args = ['proposal', 'yard', '--prices', 'prices.csv', '--out', 'p.svg'];
    const said = await lath(args, short);
    expect(said.code).toBe(0);
    expect(said.out).toMatch(/prices\.csv: line \d+: Price: expected a point before/);
    expect(said.out).toContain('    a price for hog-ring\n');
    expect(said.out).toMatch(/ {4}line \d+ of the price list, which was not taken/);
    const svg = String(said.files.get('p.svg'));
    expect(svg).toContain('still to be worked out');
    expect(svg).not.toMatch(/hog-ring|Subtotal/);
  });

  it('[K7] a site with a stop flag gives a page that says so, and the code is 1', async () => {
    const text = changed({ 'gates/gate:drive/leaves/leaf:drive-1/widths/top': 240 });
    const said = await lath(['proposal', '-', '--out', 'p.svg'], { '-': text });
    expect(said).toMatchObject({ code: 1, err: '' });
    expect(String(said.files.get('p.svg'))).toContain('Not final: ');
  });

  it.each([
    [['yard'], '--out is missing: expected --out FILE.pdf|.svg'],
    [
      ['yard', '--out', 'p.doc'],
      '--out: “p.doc”: expected a file name that ends in .pdf, .svg or .png',
    ],
    [['yard', '--out', 'p.pdf', '--prices', 'none.csv'], 'none.csv: no such file'],
    [['yard', '--out', 'p.pdf', '--prices', 'yard'], 'yard: line 1: expected a header with the'],
  ])('[K2] %j is refused in one line, and nothing is written', async (args, reason) => {
    const said = await lath(['proposal', ...args], files);
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toContain(reason);
    expect(said.err).toMatch(/^[^\n]+\n$/);
    expect([...said.files.keys()].toSorted()).toEqual(['prices.csv', 'yard']);
  });
});
