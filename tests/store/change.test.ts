import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moveMark } from '../../src/site/edits/moveMark.ts';
import { addMark } from '../../src/site/edits/addMark.ts';
import { across, changeBetween } from '../../src/store/change.ts';
import { withoutBytes } from '../../src/store/picturesApart.ts';
import { randomSite } from '../engine/randomSite.ts';
import { namedSite } from './namedSite.ts';

describe('what an edit writes', () => {
  it('[H41] a change leads from either document to the other, whatever they are', () => {
    fc.assert(
      fc.property(randomSite, randomSite, (one, other) => {
        const [before, after] = [withoutBytes(one), withoutBytes(other)];
        const change = structuredClone(changeBetween(before, after));
        expect(across(before, change, 'forth')).toEqual(after);
        expect(across(after, change, 'back')).toEqual(before);
        expect(changeBetween(before, structuredClone(before))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  it('[H41] a change names the fields that were written and no others, and shares the rest', () => {
    const before = withoutBytes(
      addMark(addMark(namedSite('a'), { x: 0, y: 0 } as never), { x: 9, y: 9 } as never),
    );
    const after = withoutBytes(moveMark(before as never, 'mark:2', { x: 12, y: 9 } as never));
    const change = changeBetween(before, after);
    expect(change).toEqual([{ at: ['marks', 'mark:2', 'x'], was: 9, is: 12 }]);
    const again = across(before, change, 'forth') as unknown as ReturnType<typeof namedSite>;
    expect(again.marks['mark:1']).toBe((before as unknown as typeof again).marks['mark:1']);
    expect(again.counting).toBe((before as unknown as typeof again).counting);
  });
});
