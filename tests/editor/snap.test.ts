import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Aim } from '../../src/editor/aim.ts';
import { snap } from '../../src/editor/snap.ts';
import { untyped } from '../../src/editor/typed.ts';
import { inches } from '../../src/units/inches.ts';
import { fromDegrees, radians } from '../../src/units/radians.ts';
import { namedSite } from '../store/namedSite.ts';
import { yard } from './yard.ts';

const aim = (x: number, y: number, change: Partial<Aim> = {}): Aim => ({
  at: { x, y },
  reach: inches(6),
  free: false,
  from: null,
  last: null,
  typed: untyped,
  except: [],
  also: [],
  ...change,
});

const found = (x: number, y: number, change: Partial<Aim> = {}) => {
  const { point, kind, on } = snap(yard, aim(x, y, change));
  return { x: point.x, y: point.y, kind, on };
};

/** The end of the back fence, drawn on from there: the last leg ran south. */
const atEnd: Partial<Aim> = {
  from: { x: 840, y: -480 },
  last: fromDegrees(-90),
  except: ['mark:fence3'],
};

describe('snap', () => {
  it('[E2] a mark within reach comes before the wall that it stands in', () => {
    expect(found(3, 238)).toEqual({
      x: 0,
      y: 240,
      kind: 'mark',
      on: { kind: 'mark', id: 'mark:house4' },
    });
    expect(found(8, 238).kind).toBe('edge');
  });

  it('[E2] the nearest mark is taken, and none at which only a tree stands', () => {
    expect(found(600, 600).kind).toBe('free');
    expect(found(838, -2).on).toEqual({ kind: 'mark', id: 'mark:fence2' });
  });

  it('[E2] says which wall, boundary or leg it stands on', () => {
    expect(found(180, 4)).toEqual({
      x: 180,
      y: 0,
      kind: 'edge',
      on: { kind: 'side', feature: 'feature:house', as: 'building', id: 'vertex:house1' },
    });
    expect(found(0, -897).on).toMatchObject({ feature: 'feature:lot', as: 'boundary' });
    expect(found(600, 5)).toEqual({
      x: 600,
      y: 0,
      kind: 'edge',
      on: { kind: 'leg', line: 'line:fence', id: 'vertex:fence1' },
    });
  });

  it('[E2] a point is drawn square to the last leg', () => {
    expect(found(400, -477, atEnd)).toEqual({ x: 400, y: -480, kind: 'line', on: null });
    expect(snap(yard, aim(400, -477, atEnd)).lines.map(({ label }) => label)).toEqual([
      'square to the last leg',
    ]);
    expect(found(837, -700, atEnd)).toMatchObject({ x: 840, y: -700, kind: 'line' });
  });

  it('[E2] a point is drawn parallel and square to a wall', () => {
    const turned = {
      ...yard,
      marks: { ...yard.marks, 'mark:house2': { x: 300, y: 300, label: '', fixed: false } } as const,
    };
    const away = snap(turned, aim(-203, 202, { from: { x: -100, y: 100 } }));
    expect(away.lines[0]).toMatchObject({ kind: 'parallel', label: 'square to the wall' });
    expect(away.point.x).toBeCloseTo(-202.5, 9);
    expect(away.point.y).toBeCloseTo(202.5, 9);
  });

  it('[E2] a point is drawn onto the line on from a wall, not far beyond it', () => {
    const beyond = snap(yard, aim(-203, 243));
    expect(beyond.point).toEqual({ x: -203, y: 240 });
    expect(beyond.lines[0]?.label).toBe('in line with the building');
    expect(found(-700, 243).kind).toBe('free');
  });

  it('[E2] a line that crosses a leg or a wall holds both', () => {
    const up = found(203, 3, { from: { x: 200, y: -300 } });
    expect(up).toMatchObject({ x: 200, y: 0, kind: 'crossing', on: { as: 'building' } });
    const over = found(203, -897, { from: { x: 200, y: -300 } });
    expect(over).toMatchObject({ x: 200, y: -900, kind: 'crossing', on: { as: 'boundary' } });
  });

  it('[E2] two lines that cross hold the point where they do', () => {
    const corner = snap(yard, aim(362, -478, atEnd));
    expect(corner.point).toEqual({ x: 360, y: -480 });
    expect(corner.kind).toBe('crossing');
    expect(corner.lines.map(({ kind }) => kind)).toEqual(['square', 'extension']);
  });

  it('[E2] the stronger sort of line is taken, not the nearer line', () => {
    const also = [
      { kind: 'extension', origin: { x: 0, y: -476 }, way: { x: 1, y: 0 }, label: 'near by' },
    ] as const;
    expect(found(300, -477, { ...atEnd, also }).y).toBe(-480);
  });

  it('[E2] lines from one start do not cross there', () => {
    expect(found(841, -477, atEnd)).toMatchObject({ x: 841, y: -480, kind: 'line' });
  });

  it('[E2] nothing is snapped to while snapping is off, nor what moves along', () => {
    expect(found(3, 238, { free: true })).toEqual({ x: 3, y: 238, kind: 'free', on: null });
    expect(found(838, -478, { except: ['mark:fence3'] }).kind).not.toBe('mark');
    expect(found(838, -300, { except: ['mark:fence3'] }).kind).not.toBe('edge');
  });

  it('[E3] a typed length holds in whatever direction the hand points', () => {
    const typed = { length: inches(96), bearing: null };
    const square = found(400, -477, { ...atEnd, typed });
    expect(square).toEqual({ x: 744, y: -480, kind: 'typed', on: null });
    fc.assert(
      fc.property(
        fc.integer({ min: -2000, max: 2000 }),
        fc.integer({ min: 400, max: 2000 }),
        (x, y) => {
          const { point } = snap(
            yard,
            aim(x, y, { from: { x: 0, y: 0 }, typed, except: ['mark:house1'] }),
          );
          expect(Math.hypot(point.x, point.y)).toBeCloseTo(96, 9);
        },
      ),
    );
  });

  it('[E3] a typed bearing holds, and both hold without a hand', () => {
    const north = found(500, 100, {
      from: { x: 480, y: 0 },
      typed: { length: null, bearing: fromDegrees(90) },
    });
    expect(north).toMatchObject({ x: 480, y: 100, kind: 'typed' });
    const both = { length: inches(120), bearing: fromDegrees(180) };
    expect(found(9e4, 9e4, { from: { x: 480, y: -60 }, typed: both })).toMatchObject({
      x: 360,
      y: -60,
    });
  });

  it('[E3] a typed point stands on the mark or wall that lies right there', () => {
    const back = { length: inches(480), bearing: radians(Math.PI) };
    expect(found(0, 0, { from: { x: 840, y: 0 }, typed: back }).on).toEqual({
      kind: 'mark',
      id: 'mark:house2',
    });
    const west = { length: inches(40), bearing: radians(Math.PI) };
    const wall = found(0, 0, { from: { x: 400, y: 100 }, typed: west });
    expect(wall.on).toMatchObject({ feature: 'feature:house', id: 'vertex:house2' });
  });

  it('[E2] never throws and never leaves the reach of an untyped hand', () => {
    const number = fc.double({ min: -1500, max: 1500, noNaN: true });
    fc.assert(
      fc.property(number, number, number, number, (x, y, fromX, fromY) => {
        for (const site of [yard, namedSite('empty')]) {
          const at = aim(x, y, { from: { x: fromX, y: fromY }, last: radians(1) });
          const { point } = snap(site, at);
          expect(Math.hypot(point.x - x, point.y - y)).toBeLessThanOrEqual(6 + 1e-9);
        }
      }),
    );
  });
});
