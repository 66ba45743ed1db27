import { describe, expect, it } from 'vitest';
import { lath } from '../lath.ts';

const base = ['wind', '--fabric', '6ft', '--post', '1.9', '--speed', '115'];

describe('lath wind', () => {
  it('[K22] shows pressure, force on each part, what the post bears and the longest bay', async () => {
    const said = await lath([...base, '--rail', '1.315']);
    expect(said).toMatchObject({ code: 0, err: '' });
    // worked by hand: 24.46 psf, 27.03 psf on what is solid, 216 lb on the fabric of 6 by 10 ft
    expect(said.out).toContain('115² = 24.46 psf');
    expect(said.out).toContain('= 27.03 psf, at least 16');
    expect(said.out).toMatch(/fabric +216 lb {2}at 38"/);
    expect(said.out).toContain('ASCE 7-16 Table 29.4-2');
    expect(said.out).toContain('from memory');
    expect(said.out).toContain('They approve nothing');
  });

  it('[K22] counts every rail, barbed wire and ice', async () => {
    const more = ['--middle-rail', '1.66', '--bottom-rail', '1.66', '--barbed', '3'];
    const said = await lath([...base, ...more, '--ice', '1/8']);
    expect(said.err).toBe('');
    for (const part of ['middle rail', 'bottom rail', 'barbed wire']) {
      expect(said.out).toContain(part);
    }
    // 2 in mesh with 1/8 in all round: (2 − 1/4)² ÷ 2² of what was open
    expect(said.out).toContain('1/8" of ice all round leaves 66.4 % open of 86.7');
  });

  it('[K22] stops where the bay is longer than its post may bear', async () => {
    const said = await lath([...base, '--solid', '50 %', '--bay', '10ft']);
    expect(said.code).toBe(1);
    expect(said.out).toMatch(/% of what it may bear: no bay over \d+/);
    const told = await lath([...base, '--solid', '50', '--json']);
    const { longest } = JSON.parse(told.out) as { readonly longest: number };
    // as long as that it may be
    const fits = await lath([...base, '--solid', '50', '--bay', String(Math.floor(longest))]);
    expect(fits.code).toBe(0);
  });

  it.each([
    [['wind', '--fabric', '6ft', '--post', '1.9'], '--speed is missing'],
    [[...base, '--speed=1500'], '--speed is given twice'],
    [['wind', '--fabric', '6ft', '--post', '2.8', '--speed', '90'], '--wall is missing: no pipe'],
    [[...base, '--wall', '1'], '--wall: expected at most'],
    [[...base, '--exposure', 'A'], '--exposure: “A”: expected one of B, C, D'],
    [[...base, '--solid', '80'], '--solid: “80”: expected 1 to 70 %'],
    [[...base, '--ice', '1/2'], '--ice: 78 % solid: expected at most 70 %'],
    [[...base, '--barbed', '0'], '--barbed: “0”: expected 1 to 12 strands'],
    [[...base, '--mesh', '0.1', '--wire', '0.19'], '--mesh: 88 % solid: expected at most 70 %'],
  ])('[K2] %j is refused in one line', async (args, reason) => {
    const said = await lath(args);
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toContain(reason);
    expect(said.err).toMatch(/^[^\n]+\n$/);
  });
});
