import { describe, expect, it } from 'vitest';
import { lath } from '../lath.ts';

const base = ['footing', '--post', '2.375', '--fabric', '6ft'];

describe('lath footing', () => {
  it('[K21] tells what each rule asks for, with its source, then the largest', async () => {
    const said = await lath([...base, '--leaf', '5ft', '--frost', '36']);
    expect(said).toMatchObject({ code: 0, err: '' });
    const lines = said.out.split('\n');
    expect(lines[0]).toMatch(/^hole {2,}10" across {2}30" deep {2,}ASTM F567-07 5\.1/);
    expect(lines[1]).toMatch(/^gate post {2}18" across {2}36" deep {2}MIL-HDBK-1013\/10/);
    expect(lines[3]).toMatch(/^the largest of each: 18" across, 42" deep, /);
    expect(said.out).toContain('Call before you dig');
    expect(said.out).toContain('licensed professional');
  });

  it('[K21] shows the trials of the pole formula and what the ground was taken for', async () => {
    const said = await lath([...base, '--push', '130', '--at', '36', '--soil', 'sand', '--json']);
    const told = JSON.parse(said.out) as {
      readonly depth: number;
      readonly rows: readonly { readonly trials: readonly { readonly asks: number }[] }[];
    };
    // derived by hand from IBC 1807.3.2.1: 3.71 ft
    expect(told.depth / 12).toBeCloseTo(3.71, 1);
    expect(told.rows.at(-1)?.trials.at(-1)?.asks).toBeCloseTo(told.depth, 6);
    const guessed = await lath([...base, '--push', '130', '--at', '36']);
    expect(guessed.out).toMatch(
      /100 psf for each foot = 100; .*nobody has said what the ground is/,
    );
  });

  it('[K21] stops where no depth holds the push', async () => {
    const said = await lath([...base, '--push', '90000', '--at', '36']);
    expect(said.code).toBe(1);
    expect(said.out).toContain('no depth down to 40 ft holds that push on 10"');
  });

  it.each([
    [['footing', '--post', '2.375'], '--fabric is missing'],
    [[...base, '--push', '130'], '--at is missing'],
    [[...base, '--at', '3ft'], '--push is missing'],
    [[...base, '--push', 'much', '--at', '3ft'], '--push: “much”: expected 0 to 100000 lb'],
    [
      [...base, '--soil', 'mud'],
      '--soil: “mud”: expected one of bedrock, soft rock, gravel, sand, clay',
    ],
    [[...base, '--frost', '0'], '--frost: “0” is not above zero'],
  ])('[K2] %j is refused in one line', async (args, reason) => {
    const said = await lath(args);
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toContain(reason);
    expect(said.err).toMatch(/^[^\n]+\n$/);
  });
});
