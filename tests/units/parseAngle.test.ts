import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAngle } from '../../src/units/formatAngle.ts';
import { parseAngle } from '../../src/units/parseAngle.ts';
import { quotedText } from '../../src/units/quotedText.ts';

describe('parseAngle', () => {
  it.each([
    ['180', Math.PI],
    ['180°', Math.PI],
    ['90 °', Math.PI / 2],
    ['45.0 deg', Math.PI / 4],
    ['45 DEGREES', Math.PI / 4],
    ['1 degree', Math.PI / 180],
    ['45º', Math.PI / 4],
    ['.5', Math.PI / 360],
    ['-30°', -Math.PI / 6],
    ['−30°', -Math.PI / 6],
    [' 720 ', 4 * Math.PI],
  ])('[U9] reads %s as %d rad', (text, expected) => {
    const angle = parseAngle(text);
    expect(angle.ok ? angle.value : angle.reason).toBeCloseTo(expected, 12);
  });

  it('[U9] zero has no sign', () => {
    expect(parseAngle('-0°')).toEqual({ ok: true, value: 0 });
  });

  it.each([
    ['', 'is empty'],
    ['north', 'is not an angle'],
    ['45 rad', 'is not an angle'],
    ['45°°', 'is not an angle'],
    ['--45', 'is not an angle'],
    ['1e3', 'is not an angle'],
    ['NaN', 'is not an angle'],
    ['Infinity', 'is not an angle'],
    ['22,5', 'has a decimal comma'],
    ['1'.repeat(40) + '2', 'is too long'],
  ])('[U9] says that “%s” %s', (text, why) => {
    const angle = parseAngle(text);
    expect(angle.ok ? 'read' : angle.reason).toContain(`${quotedText(text)} ${why}`);
    expect(angle.ok ? 'read' : angle.reason).toMatch(/expected .*such as [\d.]+/);
  });

  it('[U9] never throws: a finite angle, or one line that quotes the text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const angle = parseAngle(text);
        if (angle.ok) expect(Number.isFinite(angle.value)).toBe(true);
        else expect(angle.reason.startsWith(`${quotedText(text)} `)).toBe(true);
      }),
    );
  });

  it('[U9] every tenth of a degree in ten turns either way is written and read as itself', () => {
    fc.assert(
      fc.property(fc.integer({ min: -36_000, max: 36_000 }), (tenths) => {
        const text = `${tenths / 10}°`;
        const angle = parseAngle(text);
        expect(angle.ok ? formatAngle(angle.value) : angle.reason).toBe(text);
      }),
    );
  });
});
