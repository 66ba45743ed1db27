import { expect, it } from 'vitest';
import { tieFault } from '../../../src/engine/survey/tieFault.ts';
import { tied } from '../../../src/geometry/tied.ts';
import { inches } from '../../../src/units/inches.ts';

const base = { start: { x: 0, y: 0 }, end: { x: inches(240), y: 0 } };
const feet = { system: 'feet', fraction: 16 } as const;
const fault = (start: number, end: number) =>
  tieFault(tied(base, { start, end, side: 'left' }), feet);

it('[V5] says in one line why two tapes do not meet, and by how much', () => {
  expect(fault(200, 200)).toBeNull();
  expect(fault(100, 120)).toBe(
    `the two tapes are 1'-8" too short together to meet: tape them again`,
  );
  expect(fault(400, 120)).toBe(
    `the first tape is 3'-4" too long to meet the other: tape them again`,
  );
  expect(fault(10, 300)).toBe(
    `the second tape is 4'-2" too long to meet the other: tape them again`,
  );
  const nowhere = tied<'site'>(
    { start: base.start, end: base.start },
    { start: 5, end: 5, side: 'left' },
  );
  expect(tieFault(nowhere, { system: 'mm', fraction: 16 })).toBe(
    'both tapes are hooked on one spot: hook them on two marks',
  );
});
