import { describe, expect, it } from 'vitest';
import { bookColumns } from '../../../src/exporters/csv/bookColumns.ts';
import { importLines } from '../../../src/screens/book/importLines.ts';
import type { Hardware } from '../../../src/site/hardware.ts';
import type { HardwareId } from '../../../src/site/ids.ts';
import { inches } from '../../../src/units/inches.ts';
import { inventedHinge } from '../../store/invented.ts';

describe('importLines', () => {
  it('names what would be changed, from what to what, and nothing else', () => {
    const old = inventedHinge('Old name');
    const takes = { ...old.takes, high: inches(2.25) };
    const entry = { ...old, label: 'New name', takes, pin: inches(1) };
    const { changed, added } = importLines<HardwareId, Hardware>(
      {
        added: [{ line: 2, id: 'hardware:b', entry: inventedHinge('B') }],
        changed: [{ line: 7, id: 'hardware:a', entry }],
        same: 0,
        refused: [],
        leftOut: [],
      },
      {
        book: { 'hardware:a': old },
        columns: bookColumns,
        nameOf: ({ label }) => label,
        lineOf: ({ label }) => `all of ${label}`,
      },
    );
    expect(added).toEqual(['line 2: all of B']);
    expect(changed).toEqual([
      'line 7: Old name: name Old name to New name, high 2" to 2 1/4", pin nothing to 1"',
    ]);
  });
});
