import { describe, expect, it } from 'vitest';
import { openingTable } from '../../../src/drawing/tables/openingTable.ts';
import { workingTable } from '../../../src/drawing/tables/workingTable.ts';
import { inches } from '../../../src/units/inches.ts';
import { handYard } from '../handYard.ts';

const { site, layout } = handYard([
  {
    corners: [
      { x: 0, y: 0 },
      { x: 330, y: 0 },
    ],
    closed: false,
    maxBay: 120,
    gates: [{ leg: 0, from: 120, leaf: 44 }],
  },
]);
const [gate] = Object.values(layout.gates);
if (gate === undefined) throw new Error('expected the gate of the hand-made yard');

describe('openingTable', () => {
  it('[D25] says what to hold, from where to where it holds, and how it hangs', () => {
    expect(openingTable(layout, site).rows).toEqual([
      [
        'Gate 1, single swing',
        '3\'-8"',
        '3\'-11 7/8"',
        '3\'-11 3/8"',
        '4\'-0 3/8"',
        'C',
        'to the left, looking from C to D',
        '4\'-2 1/4"',
        '',
      ],
    ]);
  });

  it('[D25] says so where nothing holds for sure, and where a gate is not placed', () => {
    const opening = { ...gate.opening, holdsFrom: inches(50), holdsTo: inches(49) };
    const gates = { [gate.id]: { ...gate, opening, posts: null, placed: false } };
    const [row] = openingTable({ ...layout, gates }, site).rows;
    expect(row?.slice(3, 7)).toEqual(['not for sure', 'not for sure', '', 'not placed']);
  });
});

describe('openings on a site in hundredths of a foot', () => {
  it('[U10] [D31] are written in inches, what stands beside tape readings in feet as well', () => {
    const coarse = { ...site, lengths: { system: 'decimal feet', fraction: 8 } as const };
    const [row] = openingTable(layout, coarse).rows;
    // 47.875 / 12 = 3.9896 and 50.25 / 12 = 4.1875
    expect(row?.slice(1, 5)).toEqual(['44"', '3.990\' (47 7/8")', '47 3/8"', '48 3/8"']);
    expect(row?.[7]).toBe('4.188\' (50 1/4")');
    expect(workingTable(gate, coarse).rows[1]?.slice(0, 4)).toEqual([
      'Hinge',
      '1 7/8"',
      '1 7/8"',
      '1 7/8"',
    ]);
  });
});

describe('workingTable', () => {
  it('[D25] lists every term with its source, and what they add up to', () => {
    expect(workingTable(gate, site).rows).toEqual([
      ['Leaf', '3\'-8"', '3\'-8"', '3\'-8"', 'measured'],
      ['Hinge', '1 7/8"', '1 7/8"', '1 7/8"', 'measured'],
      ['Latch', '1 1/2"', '2"', '2 1/2"', 'measured'],
      [
        'Opening: holds from, hold, holds to',
        '3\'-11 3/8"',
        '3\'-11 7/8"',
        '4\'-0 3/8"',
        'planned sizes added up',
      ],
    ]);
  });
});
