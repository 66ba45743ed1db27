import { describe, expect, it } from 'vitest';
import { runLath } from '../../src/cli/runLath.ts';
import { verbs } from '../../src/cli/verbs.ts';
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

  it('helps with one verb at a time, and as JSON with all', async () => {
    for (const verb of verbs()) {
      const { io, printed } = memoryIo();
      expect(await runLath([verb.name, '--help'], io)).toBe(0);
      expect(printed.out).toContain(`lath ${verb.name}`);
      for (const { name } of verb.options) expect(printed.out).toContain(`--${name}`);
    }
    const { io, printed } = memoryIo();
    await runLath(['help', '--json'], io);
    const listed = JSON.parse(printed.out) as { verb: string }[];
    expect(listed.map(({ verb }) => verb)).toEqual(verbs().map(({ name }) => name));
  });
});
