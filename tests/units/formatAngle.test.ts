import { describe, expect, it } from 'vitest';
import { formatAngle } from '../../src/units/formatAngle.ts';
import { fromDegrees, radians } from '../../src/units/radians.ts';

describe('formatAngle', () => {
  it.each([
    [0, '0°'],
    [-0, '0°'],
    [45, '45°'],
    [22.5, '22.5°'],
    [22.25, '22.3°'],
    [-22.25, '-22.3°'],
    [-30, '-30°'],
    [-0.04, '0°'],
    [0.05, '0.1°'],
    [359.97, '360°'],
    [725, '725°'],
  ])('[U9] writes %d degrees as %s', (degrees, expected) => {
    expect(formatAngle(fromDegrees(degrees))).toBe(expected);
  });

  it('[U9] writes a right angle from its radians', () => {
    expect(formatAngle(radians(Math.PI / 2))).toBe('90°');
  });
});
