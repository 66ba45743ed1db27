import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { redrawn } from '../../../src/engine/survey/redrawn.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { fixMarks } from '../../../src/site/edits/fixMarks.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { removeLine } from '../../../src/site/edits/removeLine.ts';
import { renameLine } from '../../../src/site/edits/renameLine.ts';
import { renameMark } from '../../../src/site/edits/renameMark.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import { sampleSite } from '../../site/sampleSite.ts';
import { randomNetwork } from './randomNetwork.ts';

/** The sample with its first two marks a little off where they were drawn. */
const stood = moveMark(moveMark(sampleSite, 'mark:1', { x: 3, y: 4 }), 'mark:2', { x: 5, y: -470 });
const standing = { drawn: sampleSite, stood };

describe('the document behind an edit', () => {
  it('[V0] is the same where nothing was edited', () => {
    expect(redrawn(standing, stood)).toBe(sampleSite);
  });

  it('[V0] keeps marks where they were drawn when something else is edited', () => {
    const named = redrawn(standing, renameLine(stood, 'line:1', 'North'));
    expect(named.lines['line:1']?.label).toBe('North');
    expect(named.marks).toBe(sampleSite.marks);
    const labelled = redrawn(standing, renameMark(stood, 'mark:1', 'pin'));
    expect(labelled.marks['mark:1']).toEqual({ ...sampleSite.marks['mark:1'], label: 'pin' });
    expect(labelled.marks['mark:2']).toBe(sampleSite.marks['mark:2']);
  });

  it('[V0] draws a mark anew where it is put or fixed', () => {
    const moved = redrawn(standing, moveMark(stood, 'mark:1', { x: 30, y: 40 }));
    expect(moved.marks['mark:1']).toMatchObject({ x: 30, y: 40 });
    expect(moved.marks['mark:2']).toBe(sampleSite.marks['mark:2']);
    const fixed = redrawn(standing, fixMarks(stood, ['mark:1']));
    expect(fixed.marks['mark:1']).toMatchObject({ x: 3, y: 4, fixed: true });
  });

  it('[V0] has the marks that the edit has, and no others', () => {
    const less = redrawn(standing, removeLine(stood, 'line:2'));
    expect(Object.keys(less.marks)).toEqual(Object.keys(removeLine(sampleSite, 'line:2').marks));
  });

  it('[V0] goes out and back: an edit of a yard as it stands draws anew what it put elsewhere alone', () => {
    fc.assert(
      fc.property(fc.nat(499), fc.nat(24), fc.nat(600), (seed, n, by) => {
        const drawn = randomNetwork(seed).site;
        const now = surveyed(drawn, null).site;
        expect(redrawn({ drawn, stood: now }, now)).toBe(drawn);
        const ids = Object.keys(drawn.marks) as MarkId[];
        const id = ids[n % ids.length]!;
        const labelled = redrawn({ drawn, stood: now }, renameMark(now, id, 'pin'));
        expect(labelled).toEqual(renameMark(drawn, id, 'pin'));
        const { x, y } = now.marks[id]!;
        const moved = redrawn({ drawn, stood: now }, moveMark(now, id, { x: x + 1 + by, y }));
        expect(moved).toEqual(moveMark(drawn, id, { x: x + 1 + by, y }));
      }),
      { numRuns: 60 },
    );
  });
});
