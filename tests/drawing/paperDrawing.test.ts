import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { padProjection } from '../../src/canvas/padProjection.ts';
import { padRoom } from '../../src/canvas/padRoom.ts';
import { explode } from '../../src/drawing/explode.ts';
import type { Group } from '../../src/drawing/group.ts';
import {
  atOnce,
  differenceOf,
  drawFromNothing,
  redrawn,
  type PaperDrawing,
} from '../../src/drawing/paperDrawing.ts';
import { padGroups } from '../../src/drawing/plan/padPlan.ts';
import { fitTo, panBy, type Pad } from '../../src/editor/view.ts';
import { newCarry } from '../../src/engine/carry/carry.ts';
import { layOutFrom } from '../../src/engine/layOutFrom.ts';
import { boundsOf, type Bounds } from '../../src/geometry/bounds.ts';
import type { GateId } from '../../src/site/ids.ts';
import { moveGate } from '../../src/site/edits/moveGate.ts';
import { moveMark } from '../../src/site/edits/moveMark.ts';
import type { MarkId } from '../../src/site/ids.ts';
import type { Site } from '../../src/site/site.ts';
import { inches } from '../../src/units/inches.ts';
import { sampleYards } from './sampleYards.ts';
import { overlapsOf } from './textsOf.ts';

const inch = 96;
const pad: Pad = { width: 1000, height: 700 };

const viewOf = (site: Site) => {
  const bounds = boundsOf(Object.values<{ x: number; y: number }>(site.marks));
  if (bounds === null) throw new Error('expected marks');
  return fitTo(bounds, pad, 40);
};

const atomsOf = ({ pieces }: PaperDrawing) => [
  ...pieces.flatMap(({ marks }) => marks),
  ...pieces.flatMap(({ lines }) => lines),
  ...pieces.flatMap(({ texts }) => texts),
];

const shifted = (bounds: Bounds | null, x: number, y: number): Bounds | null =>
  bounds === null
    ? null
    : {
        minX: bounds.minX + x,
        minY: bounds.minY + y,
        maxX: bounds.maxX + x,
        maxY: bounds.maxY + y,
      };

const room = padRoom(pad, inch);
const look = { window: room.window ?? null, shown: room.shown ?? null };

const drawnOf = (site: Site) => {
  const laying = layOutFrom(site, null);
  const carry = newCarry();
  const groups = padGroups(site, laying.layout, carry);
  const projection = padProjection(viewOf(site), inch);
  const drawing = atOnce(drawFromNothing(groups, projection, room));
  return { laying, carry, groups, projection, drawing };
};

/** Edits of the sort that a hand drags: a gate along its leg, a corner. */
const editsOf = (site: Site): [string, Site][] => {
  const [gate] = Object.keys(site.gates) as GateId[];
  const [mark] = Object.keys(site.marks) as MarkId[];
  const at = site.marks[mark ?? 'mark:'] ?? { x: 0, y: 0 };
  return [
    ...(gate === undefined
      ? []
      : [
          ['a gate', moveGate(site, gate, { from: 'start', offset: inches(131.5) })] as [
            string,
            Site,
          ],
        ]),
    ...(mark === undefined
      ? []
      : [['a corner', moveMark(site, mark, { x: at.x + 17, y: at.y - 5 })] as [string, Site]]),
  ];
};

describe.each(sampleYards)('paperDrawing of $name', ({ site }) => {
  it('[D155] is the same, drawn bit by bit, as at once', () => {
    const { groups, projection, drawing } = drawnOf(site);
    expect(atomsOf(drawing)).toEqual(explode(groups.flat(), projection, room));
  });

  it('[D156] takes over the very groups that an edit leaves as they were, and no other', () => {
    const { laying, carry, groups } = drawnOf(site);
    let kept = 0;
    for (const [, edited] of editsOf(site)) {
      const { layout } = layOutFrom(edited, laying);
      const now = padGroups(edited, layout, newCarry(carry.pieces));
      expect(now).toEqual(padGroups(edited, layout, newCarry()));
      const before = new Set(groups);
      kept += now.filter((group) => before.has(group)).length;
    }
    expect(kept).toBeGreaterThan(groups.length / 8);
  });

  it('[D157] gone on with after an edit has the marks of one from nothing, and no texts that overlap', () => {
    for (const [, edited] of editsOf(site)) {
      const { laying, carry, projection, drawing } = drawnOf(site);
      const { layout } = layOutFrom(edited, laying);
      const now = padGroups(edited, layout, newCarry(carry.pieces));
      const difference = differenceOf(drawing, now, look);
      const { drawing: then, changed } = redrawn(drawing, now, look, difference);
      const fresh = atOnce(drawFromNothing(now, projection, room));
      expect(then.pieces.map(({ marks }) => marks)).toEqual(fresh.pieces.map(({ marks }) => marks));
      expect(overlapsOf(atomsOf(then))).toEqual([]);
      expect(changed.length > 0).toBe(difference.fresh.length + difference.gone.length > 0);
    }
  });

  it('[D158] moved under the pad it keeps what is wholly in sight, and has the marks of one from nothing', () => {
    const { groups, drawing, projection } = drawnOf(site);
    const [x, y] = [61, -43];
    const moved = {
      window: shifted(look.window, -x / inch, -y / inch),
      shown: shifted(look.shown, -x / inch, -y / inch),
    };
    const difference = differenceOf(drawing, groups, moved);
    const { drawing: then } = redrawn(drawing, groups, moved, difference);
    const ours = then.pieces.map(({ marks }) => marks.length);
    const view = panBy(viewOf(site), { x, y });
    const fresh = atOnce(drawFromNothing(groups, padProjection(view, inch), room));
    expect(ours).toEqual(fresh.pieces.map(({ marks }) => marks.length));
    expect(overlapsOf(atomsOf(then))).toEqual([]);
    expect(then.projection).toBe(projection);
  });
});

/** A group of a post somewhere. */
const postAt = (x: number): Group => [
  { kind: 'circle', centre: { x, y: -100 }, radius: 3, least: 0, pen: 'thin', ink: null },
];

describe('groups that come, go or change places', () => {
  it('have the pieces of those that stay, in the order asked for, and nothing else is drawn', () => {
    const some = fc.shuffledSubarray(Array.from({ length: 8 }, (_, n) => postAt(100 * n)));
    fc.assert(
      fc.property(some, some, (first, then) => {
        const projection = { origin: { x: 0, y: 0 }, scale: 1 / 100 };
        const before = atOnce(drawFromNothing(first, projection, room));
        const kept = new Map(before.pieces.map((piece) => [piece.group, piece]));
        const difference = differenceOf(before, then, look);
        const fresh = then.filter((group) => !first.includes(group));
        expect(difference.fresh.map(({ group }) => group)).toEqual(fresh);
        expect(difference.gone.map(({ group }) => group)).toEqual(
          first.filter((group) => !then.includes(group)),
        );
        expect(difference.inSight).toBe(fresh.length);
        const { pieces } = redrawn(before, then, look, difference).drawing;
        expect(pieces.every(({ group }, n) => group === then[n])).toBe(true);
        expect(pieces.length).toBe(then.length);
        for (const piece of pieces)
          if (first.includes(piece.group)) expect(piece).toBe(kept.get(piece.group));
      }),
    );
  });

  it('are not counted where they lie out of sight', () => {
    const projection = { origin: { x: 0, y: 0 }, scale: 1 / 100 };
    const before = atOnce(drawFromNothing([postAt(0)], projection, room));
    const { fresh, inSight } = differenceOf(before, [postAt(1), postAt(1_000_000)], look);
    expect([fresh.length, inSight]).toEqual([2, 1]);
  });
});
