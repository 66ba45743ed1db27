import fc from 'fast-check';
import { expect, it } from 'vitest';
import { formatAzimuth, parseAzimuth } from '../../src/units/azimuth.ts';
import { fromDegrees, toDegrees } from '../../src/units/radians.ts';

const read = (text: string): number => {
  const angle = parseAzimuth(text);
  if (!angle.ok) throw new Error(angle.reason);
  return toDegrees(angle.value);
};

it('reads and writes the compass', () => {
  expect(['0', '90', '180°', '270 deg', '-90', '450'].map(read)).toEqual([90, 0, 270, 180, 180, 0]);
  expect([90, 0, 270, 180, -180].map((angle) => formatAzimuth(fromDegrees(angle)))).toEqual([
    '0',
    '90',
    '180',
    '270',
    '270',
  ]);
});

it('says in one line what is no direction', () => {
  expect(parseAzimuth('north')).toEqual({
    ok: false,
    reason: '“north” is not an angle: expected degrees such as 45 or 22.5°',
  });
});

it('writes what it reads, to a tenth of a degree', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 3599 }), (tenths) => {
      const angle = parseAzimuth(String(tenths / 10));
      expect(angle.ok && formatAzimuth(angle.value)).toBe(String(tenths / 10));
    }),
  );
});
