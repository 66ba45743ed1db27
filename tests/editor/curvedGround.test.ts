import { describe, expect, it } from 'vitest';
import { fenceMark } from '../../src/editor/fenceMark.ts';
import { snap } from '../../src/editor/snap.ts';
import { untyped } from '../../src/editor/typed.ts';
import { nearestOnTrack, trackLength } from '../../src/geometry/track.ts';
import { curveLeg } from '../../src/site/edits/curveLeg.ts';
import { legsOf } from '../../src/site/legsOf.ts';
import { legTrack } from '../../src/site/legTrack.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { bare, fence } from '../engine/plainYard.ts';

/** A fence of one leg of 80 ft along the x axis, bowed 20 ft: a radius of 50 ft. */
const site = ((): Site => {
  const straight = fence(bare, [
    [0, 0],
    [960, 0],
  ]);
  const [leg] = Object.values(straight.lines).flatMap((line) => legsOf(line).map(({ id }) => id));
  return curveLeg(straight, { line: 'line:1', leg: leg ?? 'vertex:', bow: 240 });
})();

const tracksOf = (from: Site) =>
  Object.values(from.lines).flatMap((line) => legsOf(line).map((leg) => legTrack(from, line, leg)));

const aim = {
  reach: inches(12),
  free: false,
  last: null,
  typed: untyped,
  except: [],
  also: [],
} as const;

describe('standing on a curved leg', () => {
  const [track] = tracksOf(site);
  if (track === undefined) throw new Error('expected a leg');

  it('[E2] a hand near the curve is drawn onto it, and one at its chord is not', () => {
    const found = snap(site, { ...aim, at: { x: 480, y: 246 }, from: null });
    expect(found.kind).toBe('edge');
    expect(found.point.x).toBeCloseTo(480, 6);
    expect(found.point.y).toBeCloseTo(240, 6);
    expect(snap(site, { ...aim, at: { x: 480, y: 20 }, from: null }).on).toBeNull();
  });

  it('[E2] a line from the piece being drawn crosses it on the arc', () => {
    const found = snap(site, { ...aim, at: { x: 302, y: 220 }, from: { x: 300, y: 600 } });
    expect(found.kind).toBe('crossing');
    expect(found.point.x).toBeCloseTo(300, 2);
    expect(nearestOnTrack(found.point, track).off).toBeLessThan(1e-6);
  });

  it('[E6] fence that touches it shares a mark on it, and both parts keep its radius', () => {
    const { point, on } = snap(site, { ...aim, at: { x: 300, y: 215 }, from: null });
    const parted = fenceMark(site, { point, on });
    const parts = tracksOf(parted.site);
    expect(parts).toHaveLength(2);
    const whole = parts.reduce((sum, part) => sum + trackLength(part), 0);
    expect(whole).toBeCloseTo(trackLength(track), 6);
    const mark = parted.site.marks[parted.mark];
    expect(nearestOnTrack({ x: mark?.x ?? NaN, y: mark?.y ?? NaN }, track).off).toBeLessThan(1e-6);
  });
});
