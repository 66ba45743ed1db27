import { describe, expect, it } from 'vitest';
import { groupTexts } from '../../../src/drawing/plan/groupTexts.ts';
import { inches } from '../../../src/units/inches.ts';

const style = { system: 'feet', fraction: 16 } as const;
const of = (...lengths: number[]) => groupTexts(lengths.map(inches), style);

describe('groupTexts', () => {
  it('[D114] equal bays are a run with its total', () => {
    expect(of(108, 108, 108, 108, 108, 108)).toEqual({
      text: '6 bays at 9\'-0" = 54\'-0"',
      shorter: '6 at 9\'-0"',
    });
  });

  it('[D114] bays of two lengths are a run of each, the more frequent first', () => {
    expect(of(100, 100.0625, 100.0625)).toEqual({
      text: '2 at 8\'-4 1/16" + 1 at 8\'-4"',
      shorter: '3 bays, together 25\'-0 1/8"',
    });
  });

  it('[D114] bays of more lengths are said together', () => {
    expect(of(100, 90, 80)).toEqual({ text: '3 bays, together 22\'-6"' });
  });
});
