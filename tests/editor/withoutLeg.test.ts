import { describe, expect, it } from 'vitest';
import { withoutLeg } from '../../src/editor/withoutLeg.ts';
import { addPin } from '../../src/site/edits/addPin.ts';
import { curveLeg } from '../../src/site/edits/curveLeg.ts';
import { setLegGrade } from '../../src/site/edits/setLegGrade.ts';
import { legsOf } from '../../src/site/legsOf.ts';
import { inches } from '../../src/units/inches.ts';
import { bare, fence } from '../engine/plainYard.ts';

describe('withoutLeg', () => {
  it('[E17] leaves the other legs their curves, their grade and the posts held on them', () => {
    const straight = fence(bare, [
      [0, 0],
      [600, 0],
      [1200, 0],
      [1800, 300],
    ]);
    const [first, second, third] = Object.values(straight.lines).flatMap((line) =>
      legsOf(line).map(({ id }) => id),
    );
    if (first === undefined || second === undefined || third === undefined) {
      throw new Error('expected three legs');
    }
    const curved = curveLeg(straight, { line: 'line:1', leg: third, bow: -80 });
    const stepped = setLegGrade(curved, 'line:1', first, 'step');
    const site = addPin(stepped, {
      line: 'line:1',
      leg: third,
      anchor: { from: 'start', offset: inches(200) },
      holds: { kind: 'post' },
    });
    const left = withoutLeg(site, 'line:1', second);
    const lines = Object.values(left.lines);
    expect(lines.map(({ curved: bows }) => Object.values(bows))).toEqual([[], [-80]]);
    expect(lines.map(({ stepped: steps }) => Object.keys(steps).length)).toEqual([1, 0]);
    const pin = left.pins['pin:1'];
    expect(pin?.anchor).toEqual({ from: 'start', offset: 200 });
    expect(Object.keys(left.lines[pin?.line ?? 'line:']?.curved ?? {})).toEqual([pin?.leg]);
  });
});
