import { describe, expect, it } from 'vitest';
import { nothingTyped, pressPoint, readTexts, waysOf } from '../../src/screens/yard/typedPiece.ts';
import { untyped } from '../../src/editor/typed.ts';
import { inches } from '../../src/units/inches.ts';
import { fromDegrees } from '../../src/units/radians.ts';

const style = { system: 'feet', fraction: 8 } as const;
const piece = { from: { x: 10, y: 20 }, last: null };

describe('a typed piece', () => {
  it('reads both fields, and leaves an empty one to the pointer', () => {
    expect(readTexts({ length: '54', azimuth: '90' }, style)).toEqual({
      ok: true,
      value: { length: 648, bearing: 0 },
    });
    expect(readTexts(nothingTyped, style)).toEqual({ ok: true, value: untyped });
    expect(readTexts({ length: 'x', azimuth: '' }, style)).toMatchObject({ ok: false });
  });

  it('refuses nothing, less than nothing and over a mile before a press could draw it', () => {
    for (const length of ['0', '-5', `99999999'`]) {
      const read = readTexts({ length, azimuth: '90' }, style);
      expect(read.ok ? '' : read.reason).toMatch(
        /^Length .*: expected (more than 0|at most a mile)/,
      );
    }
  });

  it('a direction needs no pointer when the length is typed', () => {
    const east = { length: inches(120), bearing: fromDegrees(0) };
    expect(pressPoint(piece, east, null)).toEqual({ ok: true, value: { x: 130, y: 20 } });
  });

  it('a length alone goes where the pointer is, and asks for a way where it tells none', () => {
    const long = { length: inches(120), bearing: null };
    expect(pressPoint(piece, long, { x: 10, y: 90 })).toEqual({
      ok: true,
      value: { x: 10, y: 90 },
    });
    expect(pressPoint(piece, long, { x: 10, y: 20 })).toMatchObject({ ok: false });
    expect(pressPoint(piece, long, null)).toMatchObject({ ok: false });
  });

  it('a direction alone takes its length from the pointer', () => {
    const north = { length: null, bearing: fromDegrees(90) };
    const point = pressPoint(piece, north, { x: 40, y: 80 });
    expect(point.ok && point.value.x).toBeCloseTo(10, 9);
    expect(point.ok && point.value.y).toBeCloseTo(80, 9);
    expect(pressPoint(piece, north, { x: 40, y: -80 })).toMatchObject({ ok: false });
  });

  it('offers square turns once there is a piece to be square to', () => {
    expect(waysOf(piece).map(({ azimuth }) => azimuth)).toEqual(['270', '0', '180', '90']);
    const eastward = waysOf({ ...piece, last: fromDegrees(0) }).slice(4);
    expect(eastward.map(({ label, azimuth }) => [label, azimuth])).toEqual([
      ['Square left', '0'],
      ['On', '90'],
      ['Square right', '180'],
    ]);
  });
});
