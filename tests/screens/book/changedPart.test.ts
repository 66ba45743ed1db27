import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changedPart } from '../../../src/screens/book/changedPart.ts';
import { partWords } from '../../../src/screens/book/partWords.ts';
import type { Hardware } from '../../../src/site/hardware.ts';
import { partFault } from '../../../src/site/partFault.ts';
import { inches } from '../../../src/units/inches.ts';
import { anyPart } from '../../importers/book/anyPart.ts';
import { inventedHinge } from '../../store/invented.ts';

const words = partWords('hinge', { system: 'inches', fraction: 8 });
const catches = partWords('latch', { system: 'inches', fraction: 8 });
const hinge = inventedHinge('Hinge');
const latch: Hardware = {
  ...hinge,
  kind: 'latch',
  takes: { low: inches(1), planned: inches(2), high: inches(3) },
};
const size = (low: number, planned: number, high: number) => ({
  takes: { low: inches(low), planned: inches(planned), high: inches(high) },
});
const fits = (low: number, high: number) => ({
  fits: { post: { low: inches(low), high: inches(high) }, frame: null },
});

describe('changedPart', () => {
  it('takes what makes sense', () => {
    expect(changedPart(hinge, size(1, 2, 3), words)).toEqual({
      part: { ...hinge, ...size(1, 2, 3) },
      fault: null,
    });
  });

  it.each([
    [hinge, size(-1, 2, 3), 'Takes at least: expected more than 0, found -1"'],
    [hinge, size(0, 2, 3), 'Takes at least: expected more than 0, found 0"'],
    [
      hinge,
      size(3, 2, 3),
      'Takes at least 3" is more than plan with 2": expected the smaller first',
    ],
    [
      hinge,
      size(1, 3, 2),
      'Plan with 3" is more than takes at most 2": expected the smaller first',
    ],
    [hinge, fits(3, 2), 'Fits posts from 3" is more than posts to 2": expected the smaller first'],
    [hinge, fits(0, 2), 'Fits posts from: expected more than 0, found 0"'],
    [hinge, { pin: inches(-1) }, 'Face of post to pin: expected 0 or more, found -1"'],
    [hinge, { label: ' ' }, 'Name: expected one'],
  ])('refuses bad sizes of %o in one line', (part, fields, line) => {
    expect(changedPart(part, fields, words)).toEqual({ part: null, fault: line });
  });

  it('refuses a catch that no opening meets', () => {
    expect(changedPart(latch, size(2, 2, 2), catches).fault).toBe(
      'Catches to: expected more than catches from 2"; a catch of one size is met by no opening that is set with a tape',
    );
    expect(changedPart(latch, size(3, 2, 1), catches).fault).toContain(
      'expected the smaller first',
    );
  });

  it('does not keep other fields of a part that is wrong already from being changed', () => {
    const wrong = { ...latch, ...size(2, 2, 2) };
    expect(changedPart(wrong, { remark: 'worn' }, catches).fault).toBeNull();
    expect(changedPart(wrong, size(2, 2, 2.5), catches).fault).toBeNull();
  });

  it('finds nothing wrong with any part that a hand could have made', () => {
    fc.assert(
      fc.property(anyPart, (part) => {
        expect(partFault(part, words)).toBeNull();
      }),
    );
  });
});
