import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { moveMarks } from '../../../src/site/edits/moveMarks.ts';
import { removeMark } from '../../../src/site/edits/removeMark.ts';
import { renameMark } from '../../../src/site/edits/renameMark.ts';
import { limits } from '../../../src/site/limits.ts';
import { nextId } from '../../../src/site/nextId.ts';
import { sampleSite } from '../sampleSite.ts';
import { anyPoint } from './anyEdits.ts';

describe('marks', () => {
  it('[S8] a new mark stands at its point under the next id', () => {
    const site = addMark(sampleSite, { x: 3, y: -4.5 }, 'stake');
    expect(site.marks[nextId(sampleSite, 'mark')]).toEqual({
      x: 3,
      y: -4.5,
      label: 'stake',
      fixed: false,
    });
    expect(Object.keys(site.marks).length).toBe(Object.keys(sampleSite.marks).length + 1);
  });

  it('[S9] a mark that is moved to where it is, or not at all, leaves the very same site', () => {
    expect(moveMark(sampleSite, 'mark:1', { x: 0, y: 0 })).toBe(sampleSite);
    expect(moveMark(sampleSite, 'mark:1', { x: -0, y: 0 })).toBe(sampleSite);
    expect(moveMarks(sampleSite, ['mark:1', 'mark:2'], { x: 0, y: 0 })).toBe(sampleSite);
    expect(moveMarks(sampleSite, [], { x: 1, y: 1 })).toBe(sampleSite);
    expect(renameMark(sampleSite, 'mark:11', 'pin')).toBe(sampleSite);
  });

  it('[S9] moving shares every other mark', () => {
    const site = moveMark(sampleSite, 'mark:2', { x: 7, y: 8 });
    expect(site.marks['mark:2']).toEqual({ x: 7, y: 8, label: '', fixed: false });
    expect(site.marks['mark:1']).toBe(sampleSite.marks['mark:1']);
    expect(site.lines).toBe(sampleSite.lines);
  });

  it('several marks move by one vector, and back', () => {
    fc.assert(
      fc.property(anyPoint, (by) => {
        const ids = ['mark:1', 'mark:10', 'mark:1'] as const;
        const there = moveMarks(sampleSite, ids, by);
        expect(there.marks['mark:1']).toMatchObject({ x: by.x + 0, y: by.y + 0 });
        expect(there.marks['mark:10']).toMatchObject({ x: by.x - 200.5, y: by.y + 50.25 });
        expect(there.marks['mark:2']).toBe(sampleSite.marks['mark:2']);
        expect(moveMarks(there, ids, { x: -by.x, y: -by.y })).toEqual(sampleSite);
      }),
    );
  });

  it('a mark on which nothing stands can be removed', () => {
    const site = removeMark(sampleSite, 'mark:11');
    expect('mark:11' in site.marks).toBe(false);
    expect(site.marks['mark:1']).toBe(sampleSite.marks['mark:1']);
  });

  it('[S11] what cannot be done is told in one line', () => {
    expect(() => removeMark(sampleSite, 'mark:1')).toThrow(
      new RangeError('marks: expected a mark on which nothing stands, found "mark:1"'),
    );
    expect(() => removeMark(sampleSite, 'mark:99')).toThrow(
      new RangeError('marks: expected a mark of this site, found "mark:99"'),
    );
    expect(() => moveMark(sampleSite, 'mark:1', { x: Number.NaN, y: 0 })).toThrow(
      new RangeError('marks › mark:1 › x: expected a number, found NaN'),
    );
    expect(() => moveMark(sampleSite, 'mark:1', { x: 0, y: Infinity })).toThrow(
      new RangeError('marks › mark:1 › y: expected a number, found Infinity'),
    );
    expect(() => moveMarks(sampleSite, ['mark:1', 'mark:2'], { x: 633_601, y: 0 })).toThrow(
      /^marks › mark:1 › x: expected at most 633600, found 633601 \(and 1 more/,
    );
    expect(() => moveMark(sampleSite, 'constructor' as 'mark:1', { x: 0, y: 0 })).toThrow(
      new RangeError('marks: expected a mark of this site, found "constructor"'),
    );
    expect(() => renameMark(sampleSite, 'mark:1', 'x'.repeat(201))).toThrow(RangeError);
  });

  it('[S5] no edit makes more marks than a file may hold', () => {
    const marks = Object.fromEntries(
      Array.from({ length: limits.marks }, (_, n) => [
        `mark:${n + 1}`,
        { x: 0, y: 0, label: '', fixed: false },
      ]),
    );
    expect(() => addMark({ ...sampleSite, marks }, { x: 0, y: 0 })).toThrow(
      new RangeError('marks: expected at most 20000 entries, found 20001'),
    );
  });
});
