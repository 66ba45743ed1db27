import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { changed } from './changed.ts';
import { sampleSite } from './sampleSites.ts';

const top = join(import.meta.dirname, '..', '..');
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'lath-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** The command line as a shell runs it, in a process of its own. */
const run = (args: readonly string[], input = '') => {
  const started = ['--import', 'tsx', join(top, 'src/cli/main.ts'), ...args];
  const { status, stdout, stderr } = spawnSync(process.execPath, started, {
    cwd: top,
    input,
    encoding: 'utf8',
  });
  return { status, stdout, stderr };
};

describe('lath in a process of its own', { timeout: 60_000 }, () => {
  it('prints the opening of a double gate and exits 0', () => {
    const two = (...args: string[]): string[] => [...args, ...args];
    const args = [...two('--leaf', '56 7/8'), ...two('--hinge', '1 7/8')];
    const said = run(['opening', ...args, '--catch', '2 1/2..2 1/2', '--json']);
    expect(said).toMatchObject({ status: 0, stderr: '' });
    // trade arithmetic on allowances that are common practice, no published source
    expect(JSON.parse(said.stdout)).toMatchObject({ target: 120 });
  });

  it('reads a site from standard input, and exits 1 while a stop flag stands', () => {
    expect(run(['flags', '-'], sampleSite('long-boundary'))).toMatchObject({
      status: 0,
      stdout: 'no flags\n',
    });
    const wide = changed({ 'gates/gate:drive/leaves/leaf:drive-1/widths/top': 240 });
    expect(run(['flags', '-'], wide)).toMatchObject({ status: 1, stderr: '' });
  });

  it('[K2] exits 2 with one line for what it cannot read', () => {
    const file = join(folder, 'half.site.json');
    writeFileSync(file, sampleSite('back-yard').slice(0, 900));
    for (const args of [['layout', file], ['dig']]) {
      const said = run(args);
      expect(said).toMatchObject({ status: 2, stdout: '' });
      expect(said.stderr).toMatch(/^[^\n]+\n$/);
    }
    expect(readFileSync(file, 'utf8')).toBe(sampleSite('back-yard').slice(0, 900));
    expect(readdirSync(folder)).toEqual(['half.site.json']);
  });
});
