import { expect, it } from 'vitest';
import { avoidMark } from '../../../src/drawing/explode/avoidMark.ts';
import { makeLettering } from '../../../src/drawing/lettering/lettering.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import type { SitePoint } from '../../../src/geometry/point.ts';
import { radians } from '../../../src/units/radians.ts';

const window = { minX: 0, minY: 0, maxX: 4, maxY: 4 };
/** An inch of ground is an inch of paper; y goes down the paper. */
const projection = { origin: { x: 0, y: 0 } as SitePoint, scale: 1 };

/** Whether letters at the foot of the window have room beside a fence that runs so far below it. */
const isFreeOver = (below: number): boolean => {
  const room = makeLettering(window, [], { shown: null, thin: 'broken' });
  const y = -(window.maxY + below);
  const fence: Primitive = {
    kind: 'fence',
    of: 'chain link',
    points: [
      { x: -1, y },
      { x: 5, y },
    ] as SitePoint[],
    closed: false,
    pen: 'fence',
  };
  avoidMark(room, fence, projection, window);
  const centre = { x: 2, y: 3.92 } as never;
  return room.isFree({ centre, halfWidth: 0.2, halfHeight: 0.07, angle: radians(0) });
};

it('[D111] the signs of a fence that runs just outside of a window keep letters off', () => {
  expect(isFreeOver(0.02)).toBe(false);
  expect(isFreeOver(0.2)).toBe(true);
});
