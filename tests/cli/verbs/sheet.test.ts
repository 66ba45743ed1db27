import { describe, expect, it, vi } from 'vitest';
import { papers } from '../../../src/drawing/sheet/papers.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import { formatLength } from '../../../src/units/formatLength.ts';
import { readPdf } from '../../exporters/pdf/readPdf.ts';
import { readPng } from '../../exporters/png/readPng.ts';
import { changed } from '../changed.ts';
import { lath, type Said } from '../lath.ts';
import { sampleSite } from '../sampleSites.ts';

const yard = { yard: sampleSite('back-yard') };

const bytesOf = ({ files }: Said, name: string): Uint8Array => {
  const file = files.get(name);
  if (file === undefined || typeof file === 'string') throw new Error(`${name} holds no bytes`);
  return file;
};

/** Every svg file that was written, one text after the other. */
const svgOf = ({ files }: Said): string =>
  [...files].flatMap(([name, text]) => (name.endsWith('.svg') ? [String(text)] : [])).join('\n');

/** All letters of an SVG page in the order they are drawn, without spaces. */
const lettersOf = (page: string): string =>
  [...page.matchAll(/<text [^>]*>([^<]*)</g)]
    .map(([, text = '']) => text)
    .join('')
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replace(/\s/g, '');

describe('lath sheet', { timeout: 60_000 }, () => {
  it('[K10] writes a PDF that reads back with the opening of every gate and the length of every run', async () => {
    const said = await lath(['sheet', 'yard', '--out', 'yard.pdf', '--json'], yard);
    expect(said).toMatchObject({ code: 0, err: '' });
    const told = JSON.parse(said.out) as { pages: string[]; files: string[]; check: string };
    expect(told.files).toEqual(['yard.pdf']);
    const { pages } = await readPdf(bytesOf(said, 'yard.pdf'));
    expect(pages.length).toBe(told.pages.length);
    const texts = pages.flatMap((page) => page.texts).join('\n');
    const laid = JSON.parse((await lath(['layout', 'yard', '--json'], yard)).out) as Layout;
    const style = { system: 'feet', fraction: 16 } as const;
    for (const { opening } of Object.values(laid.gates)) {
      expect(texts).toContain(formatLength(opening.target, style));
    }
    for (const { length } of Object.values(laid.lines).flatMap(({ runs }) => runs)) {
      expect(texts).toContain(formatLength(length, style));
    }
    expect(texts).toContain(told.check);
  });

  it('[C21] writes a PNG a page at the resolution that is asked for, the same bytes again', async () => {
    const made = () => lath(['sheet', 'yard', '--out', 'y.png', '--dpi', '72', '--json'], yard);
    const [said, again] = [await made(), await made()];
    expect(said.err).toBe('');
    const { files, pages } = JSON.parse(said.out) as { files: string[]; pages: string[] };
    expect(files).toEqual(pages.map((_, n) => `y-${n + 1}.png`));
    for (const name of files) {
      const bytes = bytesOf(said, name);
      const { width, height } = readPng(bytes);
      expect([width, height].toSorted((a, b) => a - b)).toEqual([612, 792]);
      expect(Buffer.from(bytes).equals(bytesOf(again, name))).toBe(true);
    }
  });

  it('[K10] the same site and paper give the same bytes on any day; another day of the job others', async () => {
    const sheet = async (text: string): Promise<Buffer> => {
      const said = await lath(['sheet', '-', '--out', 's.pdf'], { '-': text });
      return Buffer.from(bytesOf(said, 's.pdf'));
    };
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2026-11-25T10:00:00Z') });
    const first = await sheet(yard.yard);
    vi.setSystemTime(new Date('2031-02-03T04:05:06Z'));
    expect(first.equals(await sheet(yard.yard))).toBe(true);
    expect(first.equals(await sheet(changed({ 'job/date': '2026-11-21' })))).toBe(false);
    vi.useRealTimers();
  });

  it.each(Object.entries(papers))('[K10] on %s, lying either way', async (name, paper) => {
    const inch = (value: number): string => String(Number(value.toFixed(4)));
    const made = async (way: string): Promise<string> =>
      svgOf(await lath(['sheet', 'yard', '--out', 'y.svg', '--paper', name, '--way', way], yard));
    expect(await made('portrait')).toContain(
      `width="${inch(paper.width)}in" height="${inch(paper.height)}in"`,
    );
    expect(await made('landscape')).toContain(
      `width="${inch(paper.height)}in" height="${inch(paper.width)}in"`,
    );
  });

  it('[K10] an SVG file for each page, numbered, with the texts of the PDF', async () => {
    const args = ['--paper', 'a3', '--json'];
    const svg = await lath(['sheet', 'yard', '--out', 'out/yard.svg', ...args], yard);
    const pdf = await lath(['sheet', 'yard', '--out', 'yard.pdf', ...args], yard);
    const { files } = JSON.parse(svg.out) as { files: string[] };
    const { pages } = await readPdf(bytesOf(pdf, 'yard.pdf'));
    expect(files).toEqual(pages.map((_, n) => `out/yard-${n + 1}.svg`));
    pages.forEach(({ texts }, n) => {
      const letters = lettersOf(String(svg.files.get(`out/yard-${n + 1}.svg`)));
      expect(texts.length).toBeGreaterThan(20);
      // the reader may cut or join texts where letters stand far apart or close
      const missing = texts.filter((text) => !letters.includes(text.replace(/\s/g, '')));
      expect(missing).toEqual([]);
    });
  });

  it('[K7] the sheet of a site with a stop flag is written, and the code is 1', async () => {
    const text = changed({ 'gates/gate:drive/leaves/leaf:drive-1/widths/top': 240 });
    const said = await lath(['sheet', '-', '--out', 'yard.pdf'], { '-': text });
    expect(said).toMatchObject({ code: 1, err: '' });
    expect(bytesOf(said, 'yard.pdf').length).toBeGreaterThan(1000);
  });

  it.each([
    [['yard'], '--out is missing: expected --out FILE.pdf|.svg'],
    [['yard', '--out', 'yard.doc'], '--out: “yard.doc”: expected a file name that ends in .pdf'],
    [['yard', '--out', '.pdf'], '--out: “.pdf”: expected a file name'],
    [['yard', '--out', 'y.pdf', '--paper', 'b5'], '--paper: “b5”: expected one of letter, '],
    [['yard', '--out', 'y.pdf', '--paper', 'constructor'], '--paper: “constructor”: expected'],
    [['yard', '--out', 'y.pdf', '--way', 'up'], '--way: “up”: expected one of portrait, landscape'],
    [
      ['yard', '--out', 'y.pdf', '--for', 'boss'],
      '--for: “boss”: expected one of rep, office, crew',
    ],
    [['barn', '--out', 'y.pdf'], 'barn: no such file'],
  ])('[K2] %j is refused in one line, and nothing is written', async (args, reason) => {
    const said = await lath(['sheet', ...args], yard);
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toContain(reason);
    expect(said.err).toMatch(/^[^\n]+\n$/);
    expect([...said.files.keys()]).toEqual(['yard']);
  });

  it('tells people what it wrote', async () => {
    const said = await lath(['sheet', 'yard', '--out', 'yard.pdf', '--way', 'landscape'], yard);
    expect(said.out).toMatch(/^yard\.pdf: \d+ pages, Letter, wide, check value [0-9A-F]{8}\n/);
    expect(said.out).toContain('\n  1 Cover\n  2 Plan\n');
  });

  it('[K10] whole or for one reader, on A4 where the site is metric', async () => {
    const titles = async (...more: string[]) => {
      const said = await lath(['sheet', 'yard', '--out', 'y.pdf', '--json', ...more], yard);
      return (JSON.parse(said.out) as { pages: string[] }).pages.join(', ');
    };
    expect(await titles()).toContain('Tapes and holes');
    expect(await titles('--for', 'crew')).toContain('Tapes and holes');
    expect(await titles('--for', 'rep')).toMatch(/Page for the customer$/);
    const text = changed({ 'lengths/system': 'm' });
    const metric = await lath(['sheet', '-', '--out', 'y.pdf'], { '-': text });
    expect(metric.out).toContain('A4');
  });
});
