import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lath } from '../lath.ts';

interface Told {
  readonly bays: number;
  readonly bay: number;
  readonly linePosts: number;
  readonly stations: readonly number[];
  readonly readings: readonly string[];
}

const spacing = async (length: string, max: string): Promise<Told> => {
  const said = await lath(['spacing', '--length', length, '--max', max, '--json']);
  if (said.err !== '') throw new Error(said.err);
  return JSON.parse(said.out) as Told;
};

describe('lath spacing', () => {
  it('[K6] 54 ft at 10 ft: 6 bays of 108 in and 5 line posts', async () => {
    // installation sheet “Chain Link Fencing, Detailed Instructions” (Scribd 154728461): 648 in / 6
    expect(await spacing("54'", "10'")).toMatchObject({ bays: 6, bay: 108, linePosts: 5 });
  });

  it('[K6] 84 ft at 10 ft: 8 line posts', async () => {
    // homesteady.com, “How to Estimate Chain Link Fence Materials”: 8 line posts for 84 ft
    expect(await spacing("84'", "10'")).toMatchObject({ bays: 9, bay: 112, linePosts: 8 });
  });

  it('[K6] 80 ft at 10 ft: 7 line posts', async () => {
    // floor(L / 10) of the same page counts 8; ASTM F567-07 4.1 allows bays of 10 ft: ceil(80/10) - 1
    expect(await spacing("80'", "10'")).toMatchObject({ bays: 8, bay: 120, linePosts: 7 });
  });

  it('[K6] the fewest equal bays that do not exceed the largest', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 1, max: 64_000 }),
        fc.integer({ min: 64 * 24, max: 64 * 144 }),
        async (length, max) => {
          const told = await spacing(`${length / 64}in`, `${max / 64}in`);
          expect(told.bay).toBeLessThanOrEqual((max / 64) * (1 + 1e-9));
          expect(told.bays === 1 || length / 64 / (told.bays - 1) > max / 64).toBe(true);
          expect(told.stations.length).toBe(told.bays + 1);
          expect(told.stations.at(-1)).toBe(length / 64);
        },
      ),
      { numRuns: 100 },
    );
  });

  it('[K6] on a curve bays are those of the published table for its radius, and chords are told', async () => {
    // Tremonton UT 3.18.010: 10 ft at 500 ft and over, 8 ft to 200, 6 ft to 100, 5 ft at 100 and under
    const of = async (radius: string) => {
      const said = await lath([
        'spacing',
        '--length',
        "240'",
        '--max',
        "10'",
        '--radius',
        radius,
        '--json',
      ]);
      return JSON.parse(said.out) as Told & { chord: number };
    };
    const counts = ["500'", "499'", "199'", "100'"].map(async (radius) => (await of(radius)).bays);
    expect(await Promise.all(counts)).toEqual([24, 30, 40, 48]);
    // C = 2R sin(Δ/2) with Δ = 5/100
    expect((await of("100'")).chord).toBeCloseTo(2 * 1200 * Math.sin(0.025), 9);
    const said = await lath(['spacing', '--length', "240'", '--max', "4'", '--radius', "100'"]);
    expect(said.out).toContain(`60 bays of 4'-0"`);
    expect(said.out).toContain(`on a radius of 100'-0" no bay over 5'-0"`);
  });

  it('[K6] readings are rounded one by one from the hook', async () => {
    const told = await spacing('100in', '15in');
    // seven bays of 14.2857 in: to the nearest 16th
    expect(told.readings).toEqual([
      '0"',
      `1'-2 5/16"`,
      `2'-4 9/16"`,
      `3'-6 7/8"`,
      `4'-9 1/8"`,
      `5'-11 7/16"`,
      `7'-1 11/16"`,
      `8'-4"`,
    ]);
  });

  it('a stretch no longer than a bay has no line post', async () => {
    const said = await lath(['spacing', '--length', '9ft', '--max', '10ft']);
    expect(said.out).toContain(`1 bay of 9'-0", 0 line posts\n`);
  });

  it.each([
    [['--length', '54ft'], '--max is missing: expected --max L'],
    [['--length', '0', '--max', '10ft'], '--length: “0” is not above zero'],
    [['--length', 'far', '--max', '10ft'], '--length: “far” is not a length'],
    [['--length', '54 --max 10in'], `expected 54ft or "54'"`],
    [
      ['--length', '54ft', '--max', '1/32'],
      '--max: “1/32” makes over 10000 bays of “54ft”: expected',
    ],
    [['--length', '54ft', '--max', '10ft', '--radius', '0'], '--radius: “0” is not above zero'],
    [['--length', '99999999ft', '--max', '10ft'], '--length: “99999999ft” is too long'],
  ])('[K2] %j is refused in one line', async (args, reason) => {
    const said = await lath(['spacing', ...args]);
    expect(said).toMatchObject({ code: 2, out: '' });
    expect(said.err).toContain(reason);
    expect(said.err).toMatch(/^[^\n]+\n$/);
  });
});
