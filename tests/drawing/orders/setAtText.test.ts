import { describe, expect, it } from 'vitest';
import { setAtText } from '../../../src/drawing/orders/setAtText.ts';
import { openingOf } from '../../../src/engine/gate/openingOf.ts';
import { inches } from '../../../src/units/inches.ts';
import { term } from '../../engine/gate/term.ts';

describe('setAtText', () => {
  it('[O3] says what gap posts set at a width leave, and whether the latch catches', () => {
    const opening = openingOf([term('hinge', 2), term('leaf', 44), term('latch', 1.5, 2, 2.5)]);
    const at = (width: number) =>
      setAtText(opening, inches(width), { system: 'inches', fraction: 8 });
    expect(at(48)).toBe('leave a gap of 2": holds');
    expect(at(49.5)).toBe('leave a gap of 3 1/2": too wide by 1"');
    expect(at(45.9375)).toBe('are 1/16" too close for the leaves: too narrow by 1 9/16"');
  });

  it('[O3] says of two latches at a stop what they share', () => {
    const latch = term('latch', 1.5, 2, 2.5);
    const opening = openingOf([term('leaf', 44), latch, term('stop', 4), latch, term('leaf', 44)]);
    const text = setAtText(opening, inches(96.5), { system: 'inches', fraction: 8 });
    expect(text).toBe('leave 2 gaps of 4 1/2" in all: holds');
  });
});
