import { describe, expect, it } from 'vitest';
import { withLeaf } from '../../../../src/screens/openings/asSet/withLeaf.ts';
import { inches } from '../../../../src/units/inches.ts';
import { found } from '../../../engine/set/setYard.ts';

const one = 'leaf:1';
const widths = { top: inches(56), middle: null, bottom: inches(55.75) };
const other = { 'leaf:2': widths };

describe('withLeaf', () => {
  it('measures one leaf and leaves the others', () => {
    const before = found(119, null, { leaves: other, hinges: { 'leaf:2': inches(2) } });
    expect(withLeaf(before, one, ['top', inches(56.5)])).toEqual({
      ...before,
      leaves: { ...other, [one]: { top: 56.5, middle: null, bottom: null } },
    });
    expect(withLeaf(before, one, ['hinges', inches(0)])).toEqual({
      ...before,
      hinges: { 'leaf:2': 2, [one]: 0 },
    });
  });

  it('keeps the bottom when the top changes, and takes both out with the top', () => {
    const before = found(119, null, { leaves: { [one]: widths } });
    const after = withLeaf(before, one, ['top', inches(57)]);
    expect(after).toMatchObject({ leaves: { [one]: { top: 57, bottom: 55.75 } } });
    expect(withLeaf(before, one, ['top', null])).toEqual({ ...before, leaves: {} });
    expect(withLeaf(before, one, ['bottom', null])).toMatchObject({
      leaves: { [one]: { top: 56, bottom: null } },
    });
  });

  it('takes hinges out again', () => {
    const before = found(119, null, { hinges: { [one]: inches(2) } });
    expect(withLeaf(before, one, ['hinges', null])).toEqual({ ...before, hinges: {} });
  });

  it('refuses widths of nothing, hinges below nothing, and a bottom before its top', () => {
    const before = found(119, null);
    expect(withLeaf(before, one, ['top', inches(0)])).toBe('expected more than 0');
    expect(withLeaf(before, one, ['hinges', inches(-1)])).toBe('expected 0 or more');
    expect(withLeaf(before, one, ['bottom', inches(56)])).toBe(
      'expected the width at the top first',
    );
    expect(withLeaf(before, one, ['bottom', null])).toBe(before);
  });
});
