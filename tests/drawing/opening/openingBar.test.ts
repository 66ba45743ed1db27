import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Atom } from '../../../src/drawing/atom.ts';
import { openingBar } from '../../../src/drawing/opening/openingBar.ts';
import { partLevels } from '../../../src/drawing/opening/openingParts.ts';
import { setMarks } from '../../../src/drawing/opening/setMarks.ts';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { term } from '../../engine/gate/term.ts';
import { inches } from '../../../src/units/inches.ts';
import { overlapsOf, textsOf } from '../textsOf.ts';

const style = { system: 'inches', fraction: 8 } as const;

const hinge = term('hinge', 1.75, 1.875, 1.875);
const leaf = term('leaf', 56.875, 56.875, 56.875);
/** Two leaves of 56 7/8 with hinges of 1 7/8 and a gap of 2 1/2 make 10 ft (common practice). */
const double = openingOf([hinge, leaf, term('latch', 2, 2.5, 3), leaf, hinge]);
const written = (atoms: readonly Atom[]): string[] => textsOf(atoms).map(({ text }) => text);

describe('openingBar', () => {
  it('[D19] shows what stands in the opening, in its order, with its sizes', () => {
    const { atoms } = openingBar(double, { width: 7, style });
    const parts = textsOf(atoms)
      .filter(({ at }) => at.y < partLevels.end)
      .toSorted((a, b) => a.at.x - b.at.x || a.at.y - b.at.y)
      .map(({ text }) => text);
    expect(parts).toEqual([
      'hinge',
      '1 7/8"',
      'leaf',
      '56 7/8"',
      'gap',
      '2 1/2"',
      'leaf',
      '56 7/8"',
      'hinge',
      '1 7/8"',
    ]);
  });

  it('[D19] the ruler says what to hold and from where to where it holds', () => {
    const words = written(openingBar(double, { width: 7, style }).atoms);
    expect(words).toContain('hold 120"');
    // 2 × (56 7/8 + 1 7/8) + 2 and 2 × (56 7/8 + 1 3/4) + 3
    expect(words).toContain('from 119 1/2"');
    expect(words).toContain('to 120 1/4"');
  });

  it('[D19] names the nominal and the set width, however far off', () => {
    const set = setMarks({ lengths: style }, { top: inches(120.5), bottom: null });
    const marks = { nominal: inches(144), set };
    const words = written(openingBar(double, { width: 7, style, ...marks }).atoms);
    expect(words).toContain('called 144"');
    expect(words).toContain('set 120 1/2"');
  });

  it('[D51] marks both the top and the bottom of what was set where they differ', () => {
    const set = setMarks({ lengths: style }, { top: inches(121), bottom: inches(119) });
    for (const width of [3.5, 7]) {
      const words = written(openingBar(double, { width, style, set }).atoms);
      expect(words).toContain('set, top 121"');
      expect(words).toContain('set, bottom 119"');
    }
  });

  it('[D51] names where it may hold and what is likely, where that is more than what is sure', () => {
    const words = written(openingBar(double, { width: 9, style }).atoms);
    // 2 × (56 7/8 + 1 3/4) + 2 and 2 × (56 7/8 + 1 7/8) + 3
    expect(words).toContain('may from 119 1/4"');
    expect(words).toContain('may to 120 1/2"');
    expect(words.filter((text) => text.startsWith('likely')).length).toBe(2);
    const known = openingOf([term('hinge', 2), leaf, term('latch', 2, 2, 3)]);
    const sure = written(openingBar(known, { width: 9, style }).atoms);
    expect(sure.filter((text) => /^(may|likely)/.test(text))).toEqual([]);
  });

  it('[D19] says so where no width holds for sure', () => {
    const loose = openingOf([term('hinge', 1, 2, 3), leaf, term('latch', 2, 2, 2)]);
    expect(loose.holdsFrom).toBeGreaterThan(loose.holdsTo);
    const words = written(openingBar(loose, { width: 5, style }).atoms);
    expect(words).toContain('no width holds for sure: measure hinges and leaves');
    expect(words.some((text) => text.startsWith('from '))).toBe(false);
  });

  it('[D9] no text overlaps another and all stay within the bar', () => {
    const size = fc.integer({ min: 1, max: 64 }).map((n) => n / 16);
    const any = fc.record({ hinge: size, give: size, gap: size, catches: size, leaf: size });
    fc.assert(
      fc.property(any, fc.constantFrom(4, 7), (sizes, width) => {
        const { hinge: h, give, gap, catches, leaf: l } = sizes;
        const opening = openingOf([
          term('hinge', h, h, h + give),
          term('leaf', 12 * l, 12 * l, 12 * l),
          term('latch', gap, gap, gap + catches),
        ]);
        const set = setMarks({ lengths: style }, { top: inches(47), bottom: inches(46.5) });
        const bar = openingBar(opening, { width, style, nominal: inches(48), set });
        expect(overlapsOf(bar.atoms)).toEqual([]);
        for (const { at } of textsOf(bar.atoms)) {
          expect(at.x > 0 && at.x < width && at.y > 0 && at.y < bar.height).toBe(true);
        }
      }),
      { numRuns: 50 },
    );
  });
});
