import { describe, expect, it } from 'vitest';
import { lotPoints } from '../../../src/engine/calls/lotPoints.ts';
import { nearestOnTrack } from '../../../src/geometry/track.ts';
import { callsOf, walked } from './read.ts';
import { quarryDeed, tiedDeed } from './deeds.ts';

const points = (text: string, off = 0.25) => lotPoints(walked(text), callsOf(text).start, off);

describe('lotPoints', () => {
  it('[J13] corners carry what the calls say is there, the first what is at the point of beginning', () => {
    const corners = points(quarryDeed).filter(({ is }) => is === 'corner');
    expect(corners.map(({ label }) => label)).toEqual([
      'iron pin on the north line of Quarry Lane',
      'stake',
      '5/8 inch rebar',
      '',
      'stone',
      '',
    ]);
    expect(points(tiedDeed).map(({ label }) => label)).toEqual(['iron pin', 'nail', '', '']);
    expect(points(tiedDeed)[0]).toMatchObject({ x: 0, y: 0 });
  });

  it('[J13] a curve is drawn by points on it, the pieces between no farther off than is said', () => {
    const all = points(quarryDeed);
    const at = all.findIndex(({ label }) => label === '5/8 inch rebar');
    const curve = all.slice(at).filter(({ is }, n) => n === 0 || is === 'curve');
    const [start = { x: 0, y: 0 }] = curve;
    const end = all[at + curve.length] ?? { x: 0, y: 0 };
    // M = R (1 − cos Δ/2); balanced, so by the chord that it has now
    const chord = Math.hypot(end.x - start.x, end.y - start.y);
    const half = ((34 + 12 / 60 + 20 / 3600) * Math.PI) / 360;
    const bow = (chord / 2) * Math.tan(half / 2);
    const pieces = [...curve, end];
    expect(pieces.length).toBeGreaterThan(5);
    pieces.slice(1).forEach((to, n) => {
      const from = pieces[n] ?? to;
      expect(nearestOnTrack(to, { start, end, bow }).off).toBeLessThan(1e-6);
      const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
      expect(nearestOnTrack(middle, { start, end, bow }).off).toBeLessThan(0.25 + 1e-6);
    });
  });

  it('[J13] open calls are drawn as they were called, to their own end', () => {
    const open = points('due north 100\ndue east 100 to a pin');
    expect(open.map(({ x, y }) => [x, y].map(Math.round))).toEqual([
      [0, 0],
      [0, 1200],
      [1200, 1200],
    ]);
    expect(open.at(-1)?.label).toBe('pin');
    expect(points('nothing')).toEqual([]);
  });
});
