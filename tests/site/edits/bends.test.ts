import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { arcOf, nearestOnTrack, trackLength } from '../../../src/geometry/track.ts';
import { curveLeg } from '../../../src/site/edits/curveLeg.ts';
import { curveThrough } from '../../../src/site/edits/curveThrough.ts';
import { curveToRadius } from '../../../src/site/edits/curveToRadius.ts';
import { joinMarks } from '../../../src/site/edits/joinMarks.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { moveMarks } from '../../../src/site/edits/moveMarks.ts';
import { setLegLength } from '../../../src/site/edits/setLegLength.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import { legAt } from '../../../src/site/legGround.ts';
import { legTrack } from '../../../src/site/legTrack.ts';
import type { Site } from '../../../src/site/site.ts';
import { sampleSite } from '../sampleSite.ts';

const leg = 'vertex:2';
const bend = (bow: number): Site => curveLeg(sampleSite, { line: 'line:1', leg, bow });

const trackOf = (site: Site) => {
  const line = site.lines['line:1'];
  if (line === undefined) throw new Error('no line');
  return legTrack(site, line, legAt(line, leg));
};

const sweepOf = (site: Site): number => arcOf(trackOf(site))?.sweep ?? 0;

const bows = fc.double({ min: -400, max: 400, noNaN: true }).filter((bow) => Math.abs(bow) > 0.5);
const spots = fc.record({
  x: fc.integer({ min: -5000, max: 5000 }),
  y: fc.integer({ min: -5000, max: 5000 }),
});

describe('a curved leg whose marks move', () => {
  const ends = trackOf(bend(60));
  const far: MarkId = 'mark:3';

  it('[S32] goes round by the angle that it did, and moved as a whole it is the same', () => {
    fc.assert(
      fc.property(bows, spots, (bow, to) => {
        fc.pre(distance(to, ends.start) > 1);
        const site = bend(bow);
        expect(sweepOf(moveMark(site, far, to))).toBeCloseTo(sweepOf(site), 9);
        const both = moveMarks(site, ['mark:2', 'mark:3'], to);
        expect(trackOf(both).bow).toBeCloseTo(bow, 9);
      }),
    );
  });

  it('[S32] onto its other mark it keeps its bow, and comes off it as a curve', () => {
    const site = bend(60);
    const shut = moveMark(site, far, ends.start);
    expect(shut.lines['line:1']?.curved).toEqual({ [leg]: 60 });
    expect(moveMark(shut, far, ends.end).lines['line:1']?.curved).toEqual({ [leg]: 60 });
  });

  it('[S32] joined to another mark it goes round by the angle that it did', () => {
    const site = bend(60);
    const joined = joinMarks(site, far, 'mark:11');
    expect(sweepOf(joined)).toBeCloseTo(sweepOf(site), 9);
  });

  it('[S33] the length that it is given is that along the curve', () => {
    fc.assert(
      fc.property(bows, fc.double({ min: 12, max: 9000, noNaN: true }), (bow, length) => {
        const site = bend(bow);
        const set = setLegLength(site, 'line:1', leg, length);
        expect(trackLength(trackOf(set))).toBeCloseTo(length, 6);
        expect(sweepOf(set)).toBeCloseTo(sweepOf(site), 9);
      }),
    );
  });
});

const chordOf = distance(trackOf(sampleSite).start, trackOf(sampleSite).end);

describe('a leg bowed to a radius', () => {
  const chord = chordOf;

  it('[S34] has that radius, on the side that was asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 50, noNaN: true }),
        fc.constantFrom('left' as const, 'right' as const),
        (share, side) => {
          const radius = share * chord;
          const site = curveToRadius(sampleSite, { line: 'line:1', leg, radius, side });
          expect((arcOf(trackOf(site))?.radius ?? NaN) / radius).toBeCloseTo(1, 9);
          expect(Math.sign(trackOf(site).bow)).toBe(side === 'left' ? 1 : -1);
        },
      ),
    );
  });

  it('[S34] stays more than half a circle where it was more', () => {
    const site = curveToRadius(bend(chord), { line: 'line:1', leg, radius: chord, side: 'right' });
    expect(arcOf(trackOf(site))?.radius).toBeCloseTo(chord, 9);
    expect(trackOf(site).bow).toBeLessThan(-chord / 2);
  });

  it('[S11] a radius of less than half the chord is refused in one line', () => {
    expect(() =>
      curveToRadius(sampleSite, { line: 'line:1', leg, radius: chord / 2 - 1, side: 'left' }),
    ).toThrow(
      /^lines › line:1 › leg › vertex:2: expected a radius of at least half the chord, .*$/,
    );
  });
});

describe('a leg through a third point', () => {
  it('[S34] passes it, and is straight for one between its marks', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 700, noNaN: true }),
        fc.constantFrom(1, -1),
        (share, off, side) => {
          const { start, end } = trackOf(sampleSite);
          const way = { x: (end.x - start.x) / chordOf, y: (end.y - start.y) / chordOf };
          const at = {
            x: start.x + share * chordOf * way.x - side * off * way.y,
            y: start.y + share * chordOf * way.y + side * off * way.x,
          };
          const site = curveThrough(sampleSite, 'line:1', leg, at);
          expect(nearestOnTrack(at, trackOf(site)).off).toBeLessThan(1e-6);
          expect(Math.sign(trackOf(site).bow)).toBe(side);
        },
      ),
    );
    const { start, end } = trackOf(sampleSite);
    const middle = { x: (start.x + end.x) / 2, y: (start.y + end.y) / 2 };
    expect(curveThrough(bend(60), 'line:1', leg, middle).lines['line:1']?.curved).toEqual({});
  });

  it('[S11] refuses a point in line with its marks beyond them', () => {
    const { start, end } = trackOf(sampleSite);
    const beyond = { x: 2 * end.x - start.x, y: 2 * end.y - start.y };
    expect(() => curveThrough(sampleSite, 'line:1', leg, beyond)).toThrow(/found one in line/);
  });
});
