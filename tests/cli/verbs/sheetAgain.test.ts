import { describe, expect, it } from 'vitest';
import { memoryIo } from '../memoryIo.ts';
import { lath, type Said } from '../lath.ts';
import { sampleSite, sampleSites } from '../sampleSites.ts';

const bytesOf = ({ files }: Said, name: string): Uint8Array => {
  const file = files.get(name);
  if (file === undefined || typeof file === 'string') throw new Error(`${name} holds no bytes`);
  return file;
};

const sheetOf = async (input: string | Uint8Array): Promise<Uint8Array> =>
  bytesOf(await lath(['sheet', 'in', '--out', 'out.pdf'], { in: input }), 'out.pdf');

describe('a crew sheet read again', { timeout: 60_000 }, () => {
  it.each(sampleSites)('[K120] $name: the PDF of its PDF has the same bytes', async ({ text }) => {
    const first = await sheetOf(text);
    expect(Buffer.from(first).equals(await sheetOf(first))).toBe(true);
  });

  it('[K120] other verbs say the same of the PDF as of the site', async () => {
    const site = sampleSite('taped-yard');
    const pdf = await sheetOf(site);
    for (const verb of ['layout', 'flags', 'load', 'survey']) {
      const { out, code } = await lath([verb, 'in', '--json'], { in: site });
      expect(await lath([verb, 'in', '--json'], { in: pdf })).toMatchObject({ out, code, err: '' });
      expect(out.length).toBeGreaterThan(100);
    }
  });

  it('[K120] a PDF without a site file, or with a spoilt one, is one line', async () => {
    const site = sampleSite('back-yard');
    const proposal = await lath(['proposal', 'in', '--out', 'p.pdf'], { in: site });
    const none = await lath(['layout', 'p.pdf'], { 'p.pdf': bytesOf(proposal, 'p.pdf') });
    expect(none).toMatchObject({ code: 2, out: '' });
    expect(none.err).toBe(
      'p.pdf: no site file is in this PDF: expected the crew sheet of a site\n',
    );
    const spoilt = Buffer.from(await sheetOf(site));
    const start = spoilt.indexOf('stream', spoilt.indexOf('/EmbeddedFile')) + 8;
    spoilt.fill(0xff, start, start + 200);
    const said = await lath(['layout', 's.pdf'], { 's.pdf': spoilt });
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toMatch(/^s\.pdf: the site file in it, “[^”]+”: it is damaged[^\n]*\n$/);
  });

  it('[K120] comes by standard input too', async () => {
    const pdf = await sheetOf(sampleSite('back-yard'));
    const { io } = memoryIo({ '-': pdf });
    expect((await io.readBytes('-')).ok).toBe(true);
    expect(await lath(['layout', '-'], { '-': pdf })).toMatchObject({ code: 0, err: '' });
  });
});
