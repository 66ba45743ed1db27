import { describe, expect, it } from 'vitest';
import { faultOf } from './faultOf.ts';
import { run } from './run.ts';
import { sampleYards } from '../drawing/sampleYards.ts';

/** Of `npm run fuzz`, which takes 100,000; `CASES=n` tries those of another seed. */
const [count, seed] = [2000, Number(process.env['CASES'] ?? 1)];

// Random mutation of sound inputs, any of which may be refused and none of which may crash or hang a program:
// B. P. Miller, L. Fredriksen, B. So, "An Empirical Study of the Reliability of UNIX Utilities", CACM 33(12), 1990
describe('spoilt files of every kind', () => {
  it(
    '[I68] [S75] are refused in one line or read whole, in their time and memory',
    { timeout: 400_000 },
    async () => {
      const { byKind, faults } = await run({ seed, from: 0, count });
      expect(faults).toEqual([]);
      const all = [...byKind.values()];
      expect(all.reduce((sum, { inputs }) => sum + inputs, 0)).toBe(count);
      // a run of which nothing opens, or nothing is refused, tests nothing
      for (const kind of ['site file', 'crew sheet', 'GeoJSON', 'DXF', 'points'] as const) {
        expect(byKind.get(kind)?.opened).toBeGreaterThan(5);
        expect(byKind.get(kind)?.refused).toBeGreaterThan(5);
      }
    },
  );

  it('[I68] a line that is none and a site that opens no more are found', () => {
    const told = (line: string) => faultOf({ opened: true, sites: [], lines: [line] }, '');
    expect(told('line 3: expected a number, found “x”')).toBeNull();
    expect(told('Maximum call stack size exceeded')).toMatch(/unforeseen/);
    expect(told('two\nlines')).toMatch(/more than one line/);
    expect(told('x'.repeat(301))).toMatch(/301 characters/);
    const site = sampleYards[0]?.site;
    if (site === undefined) throw new Error('expected a sample');
    expect(faultOf({ opened: true, sites: [site], lines: [] }, '')).toBeNull();
    const broken = { ...site, marks: {} };
    expect(faultOf({ opened: true, sites: [broken], lines: [] }, '')).toMatch(/^half-opened/);
  });
});
