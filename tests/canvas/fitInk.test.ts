import { describe, expect, it } from 'vitest';
import { fitInk } from '../../src/canvas/fitInk.ts';
import { inkedBounds } from '../../src/drawing/inkedBounds.ts';
import { padProjection } from '../../src/canvas/padProjection.ts';
import { padRoom } from '../../src/canvas/padRoom.ts';
import { explode } from '../../src/drawing/explode.ts';
import { drawPlan } from '../../src/drawing/plan/drawPlan.ts';
import { fitTo, toScreen } from '../../src/editor/view.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { gatedYard } from '../editor/gatedYard.ts';

const site = gatedYard({ from: 'middle', offset: 0 });
const primitives = drawPlan(site, layOutSite(site));
const ground = boundsOf(Object.values(site.marks)) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
const inch = 96;

const pads = [
  ['phone', { width: 390, height: 570 }],
  ['tablet', { width: 550, height: 463 }],
  ['desktop', { width: 1040, height: 595 }],
] as const;

describe('a fitted drawing', () => {
  it.each(pads)('shows every letter and line on a %s', (_, pad) => {
    const room = { minX: 10, minY: 56, maxX: pad.width - 10, maxY: pad.height - 60 };
    const view = fitInk({ primitives, ground, pad, room, inch });
    const atoms = explode(primitives, padProjection(view, inch), padRoom(pad, inch));
    const ink = inkedBounds(atoms);
    if (ink === null) throw new Error('expected ink');
    expect(ink.minX * inch).toBeGreaterThanOrEqual(room.minX - 1.5);
    expect(ink.minY * inch).toBeGreaterThanOrEqual(room.minY - 1.5);
    expect(ink.maxX * inch).toBeLessThanOrEqual(room.maxX + 1.5);
    expect(ink.maxY * inch).toBeLessThanOrEqual(room.maxY + 1.5);
  });

  it('without ink is as large as the room, in its middle', () => {
    const pad = { width: 500, height: 400 };
    const room = { minX: 100, minY: 50, maxX: 500, maxY: 350 };
    const view = fitInk({ primitives: [], ground, pad, room, inch });
    expect(view.scale).toBe(fitTo(ground, { width: 400, height: 300 }, 0).scale);
    const { minX, minY, maxX, maxY } = ground;
    const middle = toScreen(view, { x: (minX + maxX) / 2, y: (minY + maxY) / 2 });
    expect(middle.x).toBeCloseTo(300, 6);
    expect(middle.y).toBeCloseTo(200, 6);
  });
});
