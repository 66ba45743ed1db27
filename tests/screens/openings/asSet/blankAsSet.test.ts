import { expect, it } from 'vitest';
import { blankAsSet } from '../../../../src/screens/openings/asSet/blankAsSet.ts';
import { inches } from '../../../../src/units/inches.ts';
import { found, onlyGate } from '../../../engine/set/setYard.ts';
import { swing, wayYard } from '../../../engine/wayYard.ts';

const gates = (by: string, on: string) => ({
  'gate:9': { ...onlyGate(wayYard(swing)), asSet: found(48, null, { by, on }) },
});

it('knows the opening at the top and the day, and who set another gate on that day', () => {
  const day = '2026-11-25';
  const blank = blankAsSet({ gates: gates('AB', day) }, inches(119), day);
  expect(blank).toMatchObject({ top: 119, bottom: null, on: day, by: 'AB' });
  expect(blankAsSet({ gates: gates('AB', '2026-11-24') }, inches(119), day).by).toBe('');
  expect(blankAsSet({ gates: gates('', day) }, inches(119), day).by).toBe('');
});
