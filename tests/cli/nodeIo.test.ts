import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { mostBytes, nodeIo } from '../../src/cli/nodeIo.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lath-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const at = (name: string): string => join(folder, name);
const reasonOf = (result: { ok: true } | { ok: false; reason: string }): string =>
  result.ok ? 'done' : result.reason;

describe('nodeIo', () => {
  it('[K3] replaces a file whole and leaves nothing beside it', async () => {
    writeFileSync(at('sheet.svg'), 'old');
    expect(await nodeIo.writeFile(at('sheet.svg'), 'new')).toEqual({
      ok: true,
      value: at('sheet.svg'),
    });
    expect(readFileSync(at('sheet.svg'), 'utf8')).toBe('new');
    expect(readdirSync(folder).filter((name) => name.includes('part'))).toEqual([]);
  });

  it('[K3] leaves the old file where the new one cannot be written beside it', async () => {
    writeFileSync(at('kept.svg'), 'old');
    const part = `kept.svg.${process.pid}.part`;
    writeFileSync(at(part), 'not ours');
    expect(reasonOf(await nodeIo.writeFile(at('kept.svg'), 'new'))).toContain(`${part}: it is in`);
    expect(readFileSync(at('kept.svg'), 'utf8')).toBe('old');
    expect(readFileSync(at(part), 'utf8')).toBe('not ours');
  });

  it('[K3] refuses a directory that is missing, and a name that is one', async () => {
    expect(reasonOf(await nodeIo.writeFile(at('no/sheet.pdf'), 'x'))).toContain(
      'there is no directory',
    );
    mkdirSync(at('yard'));
    expect(reasonOf(await nodeIo.writeFile(at('yard'), 'x'))).toContain('it is a directory');
  });

  it('[K2] says in one line why a file cannot be read', async () => {
    mkdirSync(at('shed'));
    writeFileSync(at('picture'), Uint8Array.of(0x89, 0xff, 0xfe));
    writeFileSync(at('huge'), Buffer.alloc(mostBytes + 1, ' '));
    expect(reasonOf(await nodeIo.readText(at('none')))).toContain('there is no such file');
    expect(reasonOf(await nodeIo.readText(at('shed')))).toContain('it is a directory');
    expect(reasonOf(await nodeIo.readText(at('picture')))).toContain('it is not text');
    expect(reasonOf(await nodeIo.readText(at('huge')))).toContain('it is over 32 MB');
  });

  it('reads the fonts that a PDF embeds, two that differ', async () => {
    const [regular, bold] = [await nodeIo.readFont('regular'), await nodeIo.readFont('bold')];
    // an OpenType file with TrueType outlines begins with 00 01 00 00 (OpenType spec, table directory)
    expect(Array.from(regular.slice(0, 4))).toEqual([0, 1, 0, 0]);
    expect(Buffer.from(regular).equals(bold)).toBe(false);
  });
});
