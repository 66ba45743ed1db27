import { describe, expect, it } from 'vitest';
import { runLath } from '../../src/cli/runLath.ts';
import { verbs } from '../../src/cli/verbs.ts';
import { changed } from './changed.ts';
import { memoryIo } from './memoryIo.ts';

describe('runLath', () => {
  it('[K2] answers an unknown verb with one line and code 2', async () => {
    const { io, printed } = memoryIo();
    expect(await runLath(['dig'], io)).toBe(2);
    expect(printed.err).toMatch(/^lath: there is no verb “dig”: expected one of .*help\n$/);
    expect(printed.out).toBe('');
  });

  it.each([[[]], [['help']], [['--help']], [['-h']]])('%j names every verb', async (args) => {
    const { io, printed } = memoryIo();
    expect(await runLath(args, io)).toBe(0);
    for (const { name, does } of verbs()) {
      expect(printed.out).toMatch(new RegExp(`^  ${name} +${does}$`, 'm'));
    }
  });

  it('helps with one verb at a time, asked in three ways, and as JSON with all', async () => {
    for (const verb of verbs()) {
      const pages: string[] = [];
      for (const args of [
        [verb.name, '--help'],
        [verb.name, '-h'],
        ['help', verb.name],
      ]) {
        const { io, printed } = memoryIo();
        expect(await runLath(args, io)).toBe(0);
        pages.push(printed.out);
      }
      const [page = ''] = pages;
      expect(page).toContain(`lath ${verb.name}`);
      for (const { name } of verb.options) expect(page).toContain(`--${name}`);
      expect(new Set(pages).size).toBe(1);
    }
    const { io, printed } = memoryIo();
    await runLath(['help', '--json'], io);
    const listed = JSON.parse(printed.out) as { verb: string }[];
    expect(listed.map(({ verb }) => verb)).toEqual(verbs().map(({ name }) => name));
    const { io: other, printed: one } = memoryIo();
    await runLath(['help', 'spacing', '--json'], other);
    expect(JSON.parse(one.out)).toEqual(listed.find(({ verb }) => verb === 'spacing'));
  });

  it.each([
    [['help', 'dig'], 'lath: there is no verb “dig”: expected one of layout, '],
    [['help', 'sheet', 'load'], 'lath help: “load” is one word too many: expected [VERB]'],
    [[''], 'lath: there is no verb “”: expected one of '],
    [['\u001b[2J\nx'], 'lath: there is no verb “�[2J x”: expected one of '],
  ])('[K2] refuses %j in one line', async (args, reason) => {
    const { io, printed } = memoryIo();
    expect(await runLath(args, io)).toBe(2);
    expect(printed.err).toContain(reason);
    expect(printed.err).toMatch(/^[^\n]+\n$/);
  });

  it('prints nothing from a file that would drive the terminal', async () => {
    const yard = changed({
      'job/name': 'Red\u001b[31m yard',
      'lines/line:yard/label': 'Two\nlines',
    });
    const { io, printed } = memoryIo({ 'yard.json': yard });
    await runLath(['layout', 'yard.json'], io);
    expect(printed.out).toContain('Red�[31m yard\n');
    expect(printed.out).toContain('\nTwo lines: ');
  });
});
