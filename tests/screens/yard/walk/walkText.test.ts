import { expect, it } from 'vitest';
import type { WalkState } from '../../../../src/editor/walk/walk.ts';
import type { Position } from '../../../../src/engine/walk/readPosition.ts';
import { localPlane } from '../../../../src/geometry/localPlane.ts';
import { walkMarks } from '../../../../src/screens/yard/walk/walkMarks.ts';
import { walkPlace, type WalkPlace } from '../../../../src/screens/yard/walk/walkPlace.ts';
import { walkText } from '../../../../src/screens/yard/walk/walkText.ts';
import { inches } from '../../../../src/units/inches.ts';

const feet = { system: 'feet', fraction: 16 } as const;
const metric = { system: 'mm', fraction: 16 } as const;
const origin = { latitude: 40, longitude: -90 };
const now: Position = { latitude: 40, longitude: -90, radius: inches(200) };
const here = (change: Partial<Extract<WalkState, { is: 'here' }>> = {}): WalkState => ({
  is: 'here',
  now,
  gathered: null,
  told: null,
  ...change,
});
const place = (change: Partial<WalkPlace> = {}): WalkPlace => ({
  at: { x: 0, y: 0 },
  origin,
  radius: inches(200),
  away: null,
  ...change,
});

it('says in one line why there is no position', () => {
  const states: readonly (readonly [WalkState, RegExp])[] = [
    [{ is: 'off', why: 'denied' }, /^Position refused\. Allow it/],
    [{ is: 'off', why: 'insecure' }, /https/],
    [{ is: 'off', why: 'none' }, /tells no position/],
    [{ is: 'off', why: 'unloaded' }, /did not load/],
    [{ is: 'waiting', lack: null }, /^Waiting for a position/],
    [{ is: 'waiting', lack: 'timeout' }, /^No position for 20 s; still asking/],
    [{ is: 'waiting', lack: 'unavailable' }, /no position now; still asking/],
    [{ is: 'waiting', lack: 'unreadable' }, /cannot be read; still asking/],
    [{ is: 'paused' }, /^Paused/],
  ];
  for (const [state, line] of states) {
    expect(walkText(state, null, feet)).toMatch(line);
    expect(walkText(state, null, feet)).not.toContain('\n');
  }
});

it('says how sure a place is, in feet or metres, and when it is rough', () => {
  expect(walkText(here(), place(), feet)).toBe('You are here, within 17 ft 19 times in 20.');
  expect(walkText(here(), place(), metric)).toBe('You are here, within 6 m 19 times in 20.');
  expect(walkText(here(), place({ radius: inches(960) }), feet)).toBe(
    'You are here, within 80 ft 19 times in 20. Rough, over 50 ft: wait under open sky.',
  );
  expect(walkText(here({ gathered: [now, now] }), place(), feet)).toMatch(/^Average of 2 readings/);
  expect(walkText(here({ gathered: [now] }), place(), feet)).toMatch(/^Average of 1 reading,/);
  expect(walkText(here({ gathered: [now], told: 'moved' }), place(), feet)).toMatch(/have moved/);
  expect(walkText(here({ told: 'timeout' }), place(), feet)).toMatch(
    /The last was within 17 ft\.$/,
  );
  expect(walkText(here(), null, feet)).toBe('Laying your position on the drawing.');
});

it('tells a walk that is too far from the place of the drawing, and shows it nowhere', () => {
  const about = (latitude: number, longitude: number) =>
    walkPlace(localPlane, origin, { ...now, latitude, longitude });
  expect(about(40, -90)).toMatchObject({ away: null, radius: 200 });
  expect(walkMarks(about(40, -90))).toHaveLength(3);
  // a degree of latitude is about 69 miles, 111 km
  const far = about(41, -90);
  expect(walkText(here(), far, feet)).toBe(
    'You are 69 miles from the place of this drawing: expected within 10 miles.',
  );
  expect(walkText(here(), far, metric)).toMatch(/^You are 111 km from/);
  expect(walkMarks(far)).toEqual([]);
  // on the other side of the earth
  const farthest = about(-40, 90);
  expect(farthest.away).not.toBeNull();
  expect(walkText(here(), farthest, feet)).toMatch(/^You are .* from the place of this drawing/);
});
