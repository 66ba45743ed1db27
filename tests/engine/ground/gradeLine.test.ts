import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeLine, planAt, slopeAt } from '../../../src/engine/ground/gradeLine.ts';
import { groundOf } from '../../../src/engine/ground/groundOf.ts';
import { planLength } from '../../../src/engine/ground/planLength.ts';
import { profileAlong } from '../../../src/engine/ground/profileAlong.ts';
import { slopeLength } from '../../../src/engine/ground/slopeLength.ts';
import { steepestPart } from '../../../src/engine/ground/steepestPart.ts';
import { inches } from '../../../src/units/inches.ts';
import { scatter } from '../../geometry/scatter.ts';
import { plane, rough, shotsOn, yard } from './shotsOn.ts';

const grade = fc.integer({ min: -500, max: 500 }).map((n) => n / 1000);

describe('measuring along the grade', () => {
  it('[R4] on a plane a slope is as long as the plane makes it', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(), grade, grade, (seed, way, east, north) => {
        const ground = groundOf(shotsOn(yard(seed, 40), plane(5, east, north)));
        const [start = { x: 0, y: 0 }, end = { x: 0, y: 0 }] = scatter(way, 2, 5000);
        const [x, y] = [end.x - start.x, end.y - start.y];
        const profile = profileAlong(ground, [start, end]);
        const rise = east * x + north * y;
        expect(slopeLength(profile)).toBeCloseTo(Math.hypot(x, y, rise), 7);
        expect(steepestPart(profile)?.grade).toBeCloseTo(rise / Math.hypot(x, y), 6);
      }),
    );
  });

  // derived from 15 in 100: 100 × √(1 + 0.15²) = 101.119 ft
  it('[R4] 100 ft of plan at 15 % is 101.119 ft along the grade', () => {
    const ground = groundOf(shotsOn(yard(0, 0), plane(0, 0.15, 0)));
    const profile = profileAlong(ground, [
      { x: -600, y: 10 },
      { x: 600, y: 10 },
    ]);
    expect((slopeLength(profile) ?? 0) / 12).toBeCloseTo(101.119, 3);
  });

  // published: a tape of 30 m with 0.70 m between its ends is 29.99183 m level, its correction
  // 0.00817 m ("Calculate the horizontal length after slope correction of tape", Civil Note);
  // the correction is h² ÷ 2s, NAVEDTRA Engineering Aid Basic, chapter 12
  it('[R4] 30 m of tape with 0.70 m of rise is 29.99183 m in plan', () => {
    const metres = (length: number) => inches((length * 1000) / 25.4);
    const level = (planLength(metres(30), metres(0.7)) * 25.4) / 1000;
    expect(level).toBeCloseTo(29.99183, 5);
    expect(30 - level).toBeCloseTo(0.7 ** 2 / (2 * 30), 5);
    expect(planLength(inches(10), inches(12))).toBe(0);
  });

  it('[R5] stations in plan and along the grade rise together and turn back into each other', () => {
    fc.assert(
      fc.property(fc.nat(), fc.nat(), fc.integer({ min: 0, max: 1000 }), (seed, way, share) => {
        const ground = groundOf(shotsOn(yard(seed, 30), rough));
        const profile = profileAlong(ground, scatter(way, 3, 8000));
        const line = gradeLine(profile);
        const whole = line.slope.at(-1) ?? 0;
        const at = inches((profile.length * share) / 1000);
        const along = slopeAt(line, at);
        expect(planAt(line, along)).toBeCloseTo(at, 6);
        expect(along).toBeGreaterThanOrEqual(at * (1 - 1e-12));
        expect(along).toBeLessThanOrEqual(whole);
        expect(slopeAt(line, inches(at + 1))).toBeGreaterThanOrEqual(along);
        const unknown = profile.unknown.length > 0;
        expect(slopeLength(profile) === null).toBe(unknown);
        if (!unknown) expect(whole).toBeCloseTo(slopeLength(profile) ?? NaN, 7);
      }),
    );
  });

  it('[R5] outside of the shots it counts as long as in plan, and says so', () => {
    const ground = groundOf(shotsOn(yard(0, 0), plane(0, 0.75, 0)));
    const profile = profileAlong(ground, [
      { x: 2000, y: 10 },
      { x: 4000, y: 10 },
    ]);
    const line = gradeLine(profile);
    expect(line.unknown).toEqual([{ from: 1000, to: 2000 }]);
    expect(slopeAt(line, inches(1000))).toBeCloseTo(1250, 9);
    expect(slopeAt(line, inches(1500))).toBeCloseTo(1750, 9);
    expect(planAt(line, inches(625))).toBeCloseTo(500, 9);
    expect(planAt(line, inches(9999))).toBe(2000);
  });
});
