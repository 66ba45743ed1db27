import { describe, expect, it } from 'vitest';
import { holdsLine, openingLines } from '../../src/cli/openingLines.ts';
import { openingOf } from '../../src/engine/gate/openingOf.ts';
import type { Opening } from '../../src/engine/opening.ts';
import { term } from '../engine/gate/term.ts';
import { heldBetween } from '../engine/heldBetween.ts';
import type { LengthStyle } from '../../src/units/lengthStyle.ts';

const style: LengthStyle = { system: 'inches', fraction: 16 };
const bounds = (from: number, to: number): Opening => heldBetween(from, to);

describe('holdsLine', () => {
  it('rounds inwards: what is written is never wider than what holds', () => {
    expect(holdsLine(bounds(47.39, 48.17), style)).toBe('holds from 47 7/16" to 48 1/8"');
    expect(holdsLine(bounds(47.375, 48.125), style)).toBe('holds from 47 3/8" to 48 1/8"');
  });

  it('forgives the dust of a metric length', () => {
    const metre = { system: 'mm', fraction: 16 } as const;
    const to = bounds(1200 / 25.4, 1210 / 25.4);
    expect(holdsLine(to, metre)).toBe('holds from 1200 mm to 1210 mm');
  });

  it('falls back on decimals between two marks of the tape', () => {
    expect(holdsLine(bounds(47.38, 47.42), style)).toBe('holds from 47.380" to 47.420"');
  });

  it('says when nothing is sure to hold', () => {
    expect(holdsLine(bounds(48, 47.5), style)).toContain('no opening is sure to hold');
  });
});

describe('openingLines', () => {
  it('prints the terms, where they are uncertain, their sum and where it holds', () => {
    const opening = openingOf([
      term('hinge', 1.625, 1.875, 1.875),
      term('leaf', 44, 44, 44),
      term('latch', 1.5, 2.125, 2.5),
    ]);
    expect(openingLines(opening, style)).toEqual([
      'hinge    1 7/8"  1 5/8" to 1 7/8"  measured',
      'leaf        44"                    measured',
      'latch    2 1/8"  1 1/2" to 2 1/2"  measured',
      'Opening     48"',
      'holds from 47 3/8" to 48 1/8"',
    ]);
  });
});
