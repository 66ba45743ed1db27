import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearWords } from '../../../src/drawing/opening/clearWords.ts';
import { writer } from '../../../src/engine/set/setCase.ts';
import { inches } from '../../../src/units/inches.ts';

const write = writer({ site: { lengths: { system: 'inches', fraction: 16 } } });
const said = (top: number, bottom: number | null) =>
  clearWords(
    { top: inches(top), bottom: bottom === null ? null : inches(bottom) },
    inches(60),
    write,
  );

describe('clearWords', () => {
  it('[D60] of top and bottom tells the one that is farther off, and which way', () => {
    expect(said(60.5, 59)).toEqual({
      level: 'ask',
      words: 'Narrower than wanted by 1"',
      gap: 'Clear width 59" at the bottom, wanted 60".',
    });
    expect(said(60.5, 60.25).words).toBe('Wider than wanted by 1/2"');
    expect(said(60.5, null).gap).toBe('Clear width 60 1/2", wanted 60".');
  });

  it('[D60] is as wanted just when what is written is what was wanted', () => {
    const size = fc.integer({ min: 55 * 64, max: 65 * 64 }).map((n) => n / 64);
    fc.assert(
      fc.property(size, size, (top, bottom) => {
        const { level, words } = said(top, bottom);
        const off = Math.max(Math.abs(top - 60), Math.abs(bottom - 60));
        expect(words === 'As wanted').toBe(write(off) === write(0));
        expect(level === 'holds').toBe(words === 'As wanted');
      }),
    );
  });
});
