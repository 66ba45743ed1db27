import { describe, expect, it } from 'vitest';
import { changeLine } from '../../../src/screens/book/importLines.ts';
import { inches } from '../../../src/units/inches.ts';
import { inventedHinge } from '../../store/invented.ts';

describe('changeLine', () => {
  it('names what would be changed, from what to what, and nothing else', () => {
    const old = inventedHinge('Old name');
    const takes = { ...old.takes, high: inches(2.25) };
    const hardware = { ...old, label: 'New name', takes, pin: inches(1) };
    expect(changeLine({ line: 7, id: 'hardware:a', hardware }, { 'hardware:a': old })).toBe(
      'line 7: Old name: name Old name to New name, high 2" to 2 1/4", pin nothing to 1"',
    );
  });
});
