import { expect, it } from 'vitest';
import { usualBecomes } from '../../src/importers/usualBecomes.ts';
import { dxfLayerNames } from '../../src/exporters/dxf/dxfLayers.ts';

it.each([
  ['All of it', 'areas', 'boundary'],
  ['All of it', 'holes', 'boundary'],
  ['All of it', 'points', 'mark'],
  ['All of it', 'heights', 'grade shot'],
  ['C-PROP-LINE', 'areas', 'boundary'],
  ['V_FENCE', 'lines', 'fence line'],
  ['FENCE POSTS', 'areas', 'leave out'],
  ['BLDG_OUTLINE', 'areas', 'building'],
  ['BLDG_OUTLINE', 'lines', 'leave out'],
  ['SIGHT-DISTANCE', 'areas', 'sight triangle'],
  ['SIGHT-DISTANCE', 'lines', 'leave out'],
  ['Cottage', 'areas', 'leave out'],
  ['GAS MAIN', 'lines', 'utility, gas'],
  ['gas', 'points', 'leave out'],
  ['0', 'lines', 'leave out'],
] as const)('[I15] %s, %s, is likely to be %s', (layer, shape, becomes) => {
  expect(usualBecomes({ layer, shape })).toBe(becomes);
});

it('[I15] what a site writes out becomes again what it was, and posts and gates are left out', () => {
  const areas = dxfLayerNames.map((layer) => usualBecomes({ layer, shape: 'areas' }));
  const lines = dxfLayerNames.map((layer) => usualBecomes({ layer, shape: 'lines' }));
  expect(new Set(areas)).toEqual(
    new Set([
      'fence line',
      'boundary',
      'building',
      'paving',
      'pool',
      'keep-out',
      'leave out',
      'sight triangle',
      'front yard',
    ]),
  );
  expect(lines.filter((one) => one.startsWith('utility'))).toHaveLength(6);
  expect(usualBecomes({ layer: 'GRADE-SHOTS', shape: 'heights' })).toBe('grade shot');
  expect(usualBecomes({ layer: 'MARKS', shape: 'points' })).toBe('mark');
  expect(usualBecomes({ layer: 'GATES', shape: 'lines' })).toBe('leave out');
});
