import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/distance.ts';
import { lerp } from '../../src/geometry/lerp.ts';
import type { Track } from '../../src/geometry/track.ts';
import {
  alongOf,
  anchorAt,
  anchoredAt,
  moveAnchor,
  moveAnchorOnto,
} from '../../src/site/anchor.ts';
import type { Anchor } from '../../src/site/anchor.ts';
import { inches } from '../../src/units/inches.ts';

const anyAnchor: fc.Arbitrary<Anchor> = fc.record({
  from: fc.constantFrom('start', 'end', 'middle'),
  offset: fc.integer({ min: -6400, max: 64_000 }).map((n) => inches(n / 64)),
});

const anchor = (from: Anchor['from'], offset: number): Anchor => ({ from, offset: inches(offset) });

describe('anchors', () => {
  it('are told from the start, the end or the middle of a leg', () => {
    expect(alongOf(anchor('start', 30), 100)).toBe(30);
    expect(alongOf(anchor('end', 30), 100)).toBe(70);
    expect(alongOf(anchor('middle', 30), 100)).toBe(80);
    expect(anchorAt('start', 30, 100)).toEqual(anchor('start', 30));
    expect(anchorAt('end', 30, 100)).toEqual(anchor('end', 70));
    expect(anchorAt('middle', 30, 100)).toEqual(anchor('middle', -20));
  });

  it('hold a point on the ground; a leg without length holds its start', () => {
    const leg = { start: { x: 10, y: 20 }, end: { x: 10, y: 120 }, bow: 0 };
    expect(anchoredAt(anchor('end', 30), leg)).toEqual({ x: 10, y: 90 });
    expect(anchoredAt(anchor('end', 30), { ...leg, end: leg.start })).toEqual(leg.start);
  });

  it('[S13] hold the same point on any leg of the same straight', () => {
    const whole: Track<'site'> = { start: { x: 3, y: -4 }, end: { x: 303, y: 396 }, bow: 0 };
    const share = fc.double({ min: -1, max: 2, noNaN: true });
    fc.assert(
      fc.property(anyAnchor, share, share, (held, one, other) => {
        fc.pre(Math.abs(one - other) > 0.01);
        const part = {
          start: lerp(whole.start, whole.end, one),
          end: lerp(whole.start, whole.end, other),
          bow: 0,
        };
        const moved = moveAnchor(held, whole, part);
        expect(moved.from).toBe(held.from);
        expect(distance(anchoredAt(moved, part), anchoredAt(held, whole))).toBeLessThan(1e-6);
      }),
    );
  });

  it('[S14] from one leg onto another they stay on it, at the nearer end if need be', () => {
    const long = { start: { x: 0, y: 0 }, end: { x: 100, y: 0 }, bow: 0 };
    const short = { start: { x: 0, y: 0 }, end: { x: 60, y: 0 }, bow: 0 };
    expect(moveAnchorOnto(anchor('start', 40), long, short)).toEqual(anchor('start', 40));
    expect(moveAnchorOnto(anchor('start', 90), long, short)).toEqual(anchor('start', 60));
    expect(moveAnchorOnto(anchor('end', 10), long, short)).toEqual(anchor('end', 0));
    expect(moveAnchorOnto(anchor('middle', 45), long, short)).toEqual(anchor('middle', 30));
    // one that was off its leg already stays where it was
    expect(moveAnchorOnto(anchor('start', -7), long, short)).toEqual(anchor('start', -7));
  });
});
