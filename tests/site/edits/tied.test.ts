import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { mirrorMark } from '../../../src/site/edits/mirrorMark.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { turnMarks } from '../../../src/site/edits/turnMarks.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import { squareTurns } from '../../../src/site/squareTurns.ts';
import { turnsAt } from '../../../src/site/turnsAt.ts';
import { fromDegrees } from '../../../src/units/radians.ts';
import { sampleSite } from '../sampleSite.ts';

const apart = (site: typeof sampleSite, a: MarkId, b: MarkId): number =>
  distance(site.marks[a]!, site.marks[b]!);

describe('marks tied to others', () => {
  it('[S60] a mark goes to the other side of two others and keeps its distances', () => {
    const site = mirrorMark(sampleSite, 'mark:11', ['mark:1', 'mark:3']);
    for (const from of ['mark:1', 'mark:3'] as const) {
      expect(apart(site, 'mark:11', from)).toBeCloseTo(apart(sampleSite, 'mark:11', from), 9);
    }
    expect(apart(site, 'mark:11', 'mark:2')).not.toBeCloseTo(
      apart(sampleSite, 'mark:11', 'mark:2'),
      3,
    );
    const back = mirrorMark(site, 'mark:11', ['mark:1', 'mark:3']).marks['mark:11'];
    expect(back?.x).toBeCloseTo(sampleSite.marks['mark:11']!.x, 9);
    expect(back?.y).toBeCloseTo(sampleSite.marks['mark:11']!.y, 9);
  });

  it('[S60] two marks on one spot have no line between', () => {
    const { x, y } = sampleSite.marks['mark:1']!;
    const site = moveMark(sampleSite, 'mark:3', { x, y });
    expect(() => mirrorMark(site, 'mark:11', ['mark:1', 'mark:3'])).toThrow(
      /^marks: expected two marks apart/,
    );
  });

  it('[S61] marks that are turned keep their distances, and the others their places', () => {
    const marks = ['mark:2', 'mark:3'] as const;
    const by = fromDegrees(90);
    const site = turnMarks(sampleSite, { marks, about: { x: 0, y: 0 }, by });
    const { x, y } = sampleSite.marks['mark:3']!;
    expect(site.marks['mark:3']?.x).toBeCloseTo(-y, 9);
    expect(site.marks['mark:3']?.y).toBeCloseTo(x, 9);
    expect(apart(site, 'mark:2', 'mark:3')).toBeCloseTo(apart(sampleSite, 'mark:2', 'mark:3'), 9);
    expect(site.marks['mark:8']).toBe(sampleSite.marks['mark:8']);
  });

  it('[S62] a line turns at its marks, an open one not at its ends', () => {
    expect(turnsAt(sampleSite, 'mark:2')).toEqual([{ at: 'mark:2', from: 'mark:1', to: 'mark:3' }]);
    const ends = turnsAt(sampleSite, 'mark:4');
    expect(ends).toEqual([]);
  });

  it('[S62] corners that look square are offered until somebody has said that they are', () => {
    const turns = squareTurns(sampleSite, 'feature:1');
    expect(turns.length).toBeGreaterThan(0);
    const said = turns.reduce(
      (so, turn) => addObservation(so, { kind: 'square', ...turn, trust: null, label: '' }),
      sampleSite,
    );
    expect(squareTurns(said, 'feature:1')).toEqual([]);
    expect(squareTurns(sampleSite, 'feature:2')).toEqual([]);
  });
});
