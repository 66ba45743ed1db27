import { describe, expect, it } from 'vitest';
import { movedTogether } from '../../src/editor/movedTogether.ts';
import { select } from '../../src/editor/tools/select/select.ts';
import { unsurveyed } from '../../src/engine/survey/survey.ts';
import type { MarkId } from '../../src/site/ids.ts';
import { drive, driven, emptyLayout, move, press, release } from './drive.ts';
import { yard } from './yard.ts';

const corners: readonly MarkId[] = ['mark:house1', 'mark:house2', 'mark:house3', 'mark:house4'];
const body = (fast: boolean) => ({ ...unsurveyed, body: { marks: new Set(corners), fast } });

describe('what tapes hold together', () => {
  it('[E21] moves together, and nothing else does', () => {
    expect(movedTogether(body(false), ['mark:house1'])).toEqual(corners);
    expect(movedTogether(body(false), ['mark:fence3'])).toEqual(['mark:fence3']);
    expect(movedTogether(unsurveyed, ['mark:house1'])).toEqual(['mark:house1']);
  });

  it('[E21] goes nowhere when it is held to fixed marks', () => {
    expect(movedTogether(body(true), ['mark:house1', 'mark:fence3'])).toEqual(['mark:fence3']);
  });

  it('[E21] a corner that is dragged takes the house along', () => {
    const layout = { ...emptyLayout, survey: body(false) };
    const dragged = drive(
      select,
      driven(select, yard),
      [press(0, 240), move(40, 300), release(40, 300)],
      () => layout,
    );
    const moved = corners.map((id) => {
      const [now, was] = [dragged.site.marks[id]!, yard.marks[id]!];
      return [now.x - was.x, now.y - was.y];
    });
    expect(moved.every(([x, y]) => x === moved[0]?.[0] && y === moved[0]?.[1])).toBe(true);
    expect(moved[0]).not.toEqual([0, 0]);
    expect(dragged.site.marks['mark:fence3']).toBe(yard.marks['mark:fence3']);
  });

  it('[E21] says why it stays where it is', () => {
    const layout = { ...emptyLayout, survey: body(true) };
    const stuck = drive(select, driven(select, yard), [press(0, 240), move(40, 300)], () => layout);
    expect(stuck.say).toBe(
      'Nothing moves: tapes hold it to a fixed mark. Free that on its card first',
    );
    expect(stuck.site).toBe(yard);
  });
});
