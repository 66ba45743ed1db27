import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { languageIn } from '../../src/cli/languageIn.ts';

const top = join(import.meta.dirname, '..', '..');
const site = join(top, 'sample-sites/taped-yard.site.json');
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lath-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const run = (args: readonly string[]) => {
  const started = ['--import', 'tsx', join(top, 'src/cli/main.ts'), ...args];
  return spawnSync(process.execPath, started, { cwd: top, encoding: 'utf8' });
};

describe('--language', { timeout: 120_000 }, () => {
  it('[A15] is heard wherever it stands', () => {
    expect(languageIn(['sheet', 'A', '--language', 'es'])).toBe('es');
    expect(languageIn(['--language=ES', 'load', 'A'])).toBe('es');
    expect(languageIn(['sheet', 'A'])).toBe('en');
    expect(languageIn(['sheet', '--', '--language', 'es'])).toBe('en');
    expect(languageIn(['sheet', '--language'])).toBe('en');
  });

  it('[A13] [A15] writes a table in Spanish, with the figures of the English one', () => {
    const holes = (language: string): string => {
      const out = join(folder, `${language}.csv`);
      const args = ['take', site, '--table', 'holes', '--out', out, '--language', language];
      expect(run(args)).toMatchObject({ status: 0, stderr: '' });
      return readFileSync(out, 'utf8');
    };
    const [english, spanish] = [holes('en'), holes('es')];
    expect(english).toContain('Tape reads');
    expect(spanish).toContain('Cinta lee');
    expect(spanish).not.toContain('Tape reads');
    expect(spanish.match(/\d+/g)).toEqual(english.match(/\d+/g));
  });

  it('[A15] [C24] refuses one that there is not in one line, and one that a verb has no use for', () => {
    const out = join(folder, 'none.pdf');
    expect(run(['sheet', site, '--out', out, '--language', 'fr'])).toMatchObject({
      status: 2,
      stdout: '',
      stderr: '--language: “fr”: expected one of en, es\n',
    });
    expect(run(['schema', '--language', 'es'])).toMatchObject({ status: 2, stdout: '' });
  });
});
