import { expect, it } from 'vitest';
import { gradeOf } from '../../src/trade/gradeOf.ts';
import { pipeGrades, steelModulus } from '../../src/trade/steel.ts';
import { exposures } from '../../src/trade/windTerms.ts';
import { meshes, wires } from '../../src/trade/wires.ts';
import { inches } from '../../src/units/inches.ts';

it('[T20] pipe that nobody has told of is taken for the weaker grade; each says that it is from memory', () => {
  // ASTM F1083 and F1043: 30 ksi and 50 ksi; from memory
  expect(pipeGrades.map(({ yields }) => yields)).toEqual([30_000, 50_000]);
  expect(pipeGrades.every(({ source }) => source.status === 'memory')).toBe(true);
  // 29,000 ksi: AISC 360, from memory
  expect(steelModulus).toBe(29e6);
});

it('[T20] the steel of a pipe is that of the table for just this diameter and wall', () => {
  const steel = (od: number, wall: number) => gradeOf({ od: inches(od), wall: inches(wall) }).label;
  // F1043 Group IC rows of the pipe table, from memory
  expect([steel(1.9, 0.12), steel(1.9, 0.145), steel(1.9, 0.1)]).toEqual([
    'high strength',
    'regular',
    'regular',
  ]);
});

it('[T21] wires are those of the guide, thick to thin, meshes wide to narrow', () => {
  // CLFMI Standard Guide 4.1
  expect(wires.map(({ diameter }) => diameter)).toEqual([0.192, 0.148, 0.12, 0.113]);
  expect(meshes.toSorted((a, b) => b - a)).toEqual(meshes);
});

it('[T22] the more open the land, the more of the wind counts', () => {
  // ASCE 7-16 Table 26.10-1 up to 15 ft: .57, .85, 1.03; from memory
  expect(exposures.map(({ name, coefficient }) => [name, coefficient])).toEqual([
    ['B', 0.57],
    ['C', 0.85],
    ['D', 1.03],
  ]);
});
