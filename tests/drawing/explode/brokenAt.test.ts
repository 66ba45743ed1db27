import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Atom } from '../../../src/drawing/atom.ts';
import { breaksFor, brokenAt } from '../../../src/drawing/explode/brokenAt.ts';
import { onPiece } from '../../../src/drawing/explode/onPiece.ts';
import { pathPieces } from '../../../src/drawing/explode/pathPieces.ts';
import { circleOutline, polylineOutline } from '../../../src/drawing/explode/polylineOutline.ts';
import { pens } from '../../../src/drawing/pens.ts';
import { boxesOverlap } from '../../geometry/boxesOverlap.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { radians } from '../../../src/units/radians.ts';
import { lineStrip } from '../../../src/drawing/lettering/lineStrips.ts';

const at = fc.record({
  x: fc.double({ min: 0, max: 8, noNaN: true }),
  y: fc.double({ min: 0, max: 8, noNaN: true }),
});
const box = fc.record({
  centre: at,
  halfWidth: fc.double({ min: 0.05, max: 1, noNaN: true }),
  halfHeight: fc.double({ min: 0.05, max: 0.2, noNaN: true }),
  angle: fc.double({ min: -3, max: 3, noNaN: true }).map(radians),
});
const line = fc.oneof(
  fc
    .tuple(fc.array(at, { minLength: 2, maxLength: 6 }), fc.boolean())
    .map(([points, closed]) => polylineOutline(points, closed)),
  fc
    .tuple(at, fc.double({ min: 0.2, max: 3, noNaN: true }))
    .map(([centre, radius]) => circleOutline(centre, radius)),
);

const stroke = (outline: ReturnType<typeof circleOutline>): Atom => ({
  do: 'stroke',
  pen: pens.tree,
  outline,
});

/** Short straight pieces along what is drawn. */
const strips = (atoms: readonly Atom[]) =>
  atoms.flatMap((atom) =>
    atom.do !== 'stroke'
      ? []
      : pathPieces(atom.outline).flatMap((piece) =>
          Array.from({ length: 40 }, (_, n) =>
            lineStrip(onPiece(piece, n / 40), onPiece(piece, (n + 1) / 40), 1e-4),
          ),
        ),
  );

const long = (atoms: readonly Atom[]): number =>
  strips(atoms).reduce((sum, { halfWidth }) => sum + 2 * halfWidth, 0);

describe('brokenAt', () => {
  it('[D111] leaves nothing of a line in the box of a text', () => {
    fc.assert(
      fc.property(line, fc.array(box, { maxLength: 6 }), (outline, boxes) => {
        const rest = strips(brokenAt([stroke(outline)], breaksFor(boxes)));
        for (const own of boxes)
          expect(rest.filter((strip) => boxesOverlap(strip, own))).toEqual([]);
      }),
      { numRuns: 100 },
    );
  });

  it('[D111] takes away no more of a line than its letters need', () => {
    fc.assert(
      fc.property(line, box, (outline, own) => {
        const [before, after] = [[stroke(outline)], brokenAt([stroke(outline)], breaksFor([own]))];
        // so much of each piece at most passes through the box, grown by what it is broken before
        const through = distance(
          { x: 0, y: 0 },
          { x: 2 * own.halfWidth + 0.2, y: 2 * own.halfHeight + 0.2 },
        );
        const pieces = pathPieces(outline).length;
        expect(long(before) - long(after)).toBeLessThanOrEqual(4 * pieces * through);
      }),
      { numRuns: 60 },
    );
  });

  it('[D111] breaks hatching inside its outline, and no fill', () => {
    const square = polylineOutline(
      [
        { x: 0, y: 0 },
        { x: 4, y: 0 },
        { x: 4, y: 4 },
      ],
      true,
    );
    const fill: Atom = { do: 'fill', ink: 'water', opacity: 0.1, outline: square };
    const hatch: Atom = { do: 'clip', outline: square, atoms: [stroke(square)] };
    const over = { centre: { x: 2, y: 0 }, halfWidth: 0.5, halfHeight: 0.1, angle: radians(0) };
    const [first, second] = brokenAt([fill, hatch], breaksFor([over]));
    expect(first).toBe(fill);
    expect(second).toMatchObject({ do: 'clip', outline: square });
    expect(
      second?.do === 'clip' && strips(second.atoms).length > strips([stroke(square)]).length,
    ).toBe(true);
  });

  it('leaves a line that no text is near as it was', () => {
    const far = { centre: { x: 50, y: 50 }, halfWidth: 1, halfHeight: 1, angle: radians(0) };
    const atom = stroke(circleOutline({ x: 1, y: 1 }, 1));
    expect(brokenAt([atom], breaksFor([far]))[0]).toBe(atom);
  });
});
