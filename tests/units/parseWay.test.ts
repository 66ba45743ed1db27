import { expect, it } from 'vitest';
import { parseWay } from '../../src/units/parseWay.ts';
import { toDegrees } from '../../src/units/radians.ts';

const degrees = (text: string): number | string => {
  const way = parseWay(text);
  return way.ok ? toDegrees(way.value) : way.reason;
};

it('reads the eight winds by name and by letters, and degrees clockwise from north', () => {
  // source: the compass rose, common practice; angles are counter-clockwise from east
  const rose = {
    north: 90,
    NE: 45,
    e: 0,
    'South-East': 315,
    s: 270,
    'south west': 225,
    W: 180,
    nw: 135,
  };
  for (const [text, angle] of Object.entries(rose)) expect(degrees(text)).toBeCloseTo(angle, 9);
  expect(degrees('30')).toBeCloseTo(60, 9);
  expect(degrees('360')).toBeCloseTo(90, 9);
});

it('refuses what is no direction', () => {
  for (const text of ['', 'up', 'nn', 'northnorth'])
    expect(degrees(text)).toEqual(expect.any(String));
});
