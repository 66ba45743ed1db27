import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawOnPaper } from '../../src/drawing/drawOnPaper.ts';
import { explode } from '../../src/drawing/explode.ts';
import type { Primitive } from '../../src/drawing/primitive.ts';
import type { Projection } from '../../src/drawing/projection.ts';
import { radians } from '../../src/units/radians.ts';
import { overlapsOf, textsOf } from './textsOf.ts';

const projection: Projection = { origin: { x: 0, y: 1200 }, scale: 1 / 120 };
const window = { minX: 0, minY: 0, maxX: 12, maxY: 10 };
const coordinate = fc.integer({ min: 60, max: 1140 });
const spot = fc.record({ x: coordinate, y: coordinate });

const label: fc.Arbitrary<Primitive> = fc.record({
  kind: fc.constant('text' as const),
  at: spot,
  text: fc.constantFrom('A', '12', 'House', 'Drive gate\nopening 10\'-0"'),
  size: fc.constantFrom(0.135, 0.2),
  rise: fc.constantFrom(0, 0.1, -0.1),
  angle: fc.double({ min: -4, max: 4, noNaN: true }).map(radians),
  ink: fc.constant('text' as const),
  weight: fc.constantFrom('regular' as const, 'bold' as const),
});

const chain: fc.Arbitrary<Primitive> = fc
  .record({
    start: spot,
    turn: fc.double({ min: -4, max: 4, noNaN: true }),
    bay: fc.constantFrom(12, 60, 100, 120),
    bays: fc.integer({ min: 1, max: 5 }),
    off: fc.constantFrom(0.35, -0.35),
  })
  .map(({ start, turn, bay, bays, off }) => ({
    kind: 'dimension chain' as const,
    points: Array.from({ length: bays + 1 }, (_, n) => ({
      x: start.x + n * bay * Math.cos(turn),
      y: start.y + n * bay * Math.sin(turn),
    })),
    texts: Array.from({ length: bays }, () => `${bay}"`),
    total: bays > 1 ? `${bay * bays}"` : null,
    off,
    groups: bays > 1 ? [{ from: 0, to: bays, text: `${bays} bays at ${bay}"` }] : [],
  }));

const wall: fc.Arbitrary<Primitive> = fc.record({
  kind: fc.constant('polyline' as const),
  points: fc.array(spot, { minLength: 2, maxLength: 5 }),
  closed: fc.boolean(),
  pen: fc.constant('building' as const),
});

const drawing = fc.array(fc.oneof(label, chain, wall), { maxLength: 30 });

describe('explode', () => {
  it('[D9] no text overlaps another, all lie in the window and none is upside down', () => {
    fc.assert(
      fc.property(drawing, (primitives) => {
        const atoms = explode(primitives, projection, { window });
        expect(overlapsOf(atoms)).toEqual([]);
        for (const { at, angle } of textsOf(atoms)) {
          expect(Math.cos(angle)).toBeGreaterThan(-1e-5);
          expect(at.x > 0 && at.x < 12 && at.y > 0 && at.y < 10).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('[D10] every free text is drawn or named as left out', () => {
    fc.assert(
      fc.property(fc.array(label, { maxLength: 60 }), (primitives) => {
        const small = { minX: 0, minY: 0, maxX: 4, maxY: 4 };
        const { atoms, left } = drawOnPaper(primitives, projection, { window: small });
        const printed = [...textsOf(atoms).map(({ text }) => text), ...left].join(' ');
        const words = (text: string) => text.split(/\s+/).length;
        const wished = primitives.map((one) => (one.kind === 'text' ? one.text : ''));
        expect(words(printed.trim())).toBe(words(wished.join(' ').trim()));
      }),
      { numRuns: 40 },
    );
  });

  it('keeps off room that others have taken', () => {
    const one: Primitive = {
      kind: 'text',
      at: { x: 600, y: 600 },
      text: 'House',
      size: 0.2,
      rise: 0,
      angle: radians(0),
      ink: 'text',
      weight: 'bold',
    };
    const taken = [
      { centre: { x: 5, y: 5 }, halfWidth: 0.3, halfHeight: 0.1, angle: radians(0) },
    ] as const;
    const [free] = textsOf(explode([one], projection));
    const [moved] = textsOf(explode([one], projection, { taken }));
    expect(free?.at.x).toBeCloseTo(5, 9);
    expect(Math.hypot((moved?.at.x ?? 5) - 5, (moved?.at.y ?? 5) - 5)).toBeGreaterThan(0.1);
  });
});

describe('a dimension chain', () => {
  const bays = (bay: number, off = 0.35): Primitive => ({
    kind: 'dimension chain',
    points: [0, 1, 2, 3].map((n) => ({ x: 300 + n * bay, y: 600 })),
    texts: ['9\'-0"', '9\'-0"', '9\'-0"'],
    total: '27\'-0"',
    off,
    groups: [{ from: 0, to: 3, text: '3 bays at 9\'-0" = 27\'-0"' }],
    name: 'A–B',
  });
  const written = (primitive: Primitive, scale = 1 / 120): string[] =>
    textsOf(explode([primitive], { ...projection, scale })).map(({ text }) => text);

  it('[D11] is written bay by bay where that fits, with its total', () => {
    expect(written(bays(108))).toEqual(['9\'-0"', '9\'-0"', '9\'-0"', '27\'-0"']);
  });

  it('[D11] is written as a group of equal bays where the bays are too short', () => {
    expect(written(bays(108), 1 / 400)).toContain('3 bays at 9\'-0" = 27\'-0"');
  });

  it('[D11] is written as its total alone where the group cannot be placed', () => {
    const blocked = { minX: 0.9, minY: 1.2, maxX: 2.5, maxY: 2.1 };
    const atoms = explode([bays(108)], { ...projection, scale: 1 / 300 }, { window: blocked });
    expect(textsOf(atoms).map(({ text }) => text)).toEqual(['27\'-0"']);
  });

  it('[D37] says beside its total where its pieces are found', () => {
    const short = { ...bays(12), elsewhere: 'see tape A–B' } as Primitive;
    expect(written(short, 1 / 60)).toEqual(['27\'-0", see tape A–B']);
    expect(written(bays(12), 1 / 60)).toEqual(['27\'-0"']);
    // with room for its pieces it has no need to
    const long = { ...bays(108), elsewhere: 'see tape A–B' } as Primitive;
    expect(written(long)).not.toContain('27\'-0", see tape A–B');
  });

  it('[D10] is written where a window shows it, and named where the window cuts it off', () => {
    const half = { minX: 0, minY: 0, maxX: 4.5, maxY: 10 };
    const { atoms, left } = drawOnPaper([bays(108)], projection, { window: half });
    expect(textsOf(atoms).map(({ text }) => text)).toEqual(['9\'-0"', '9\'-0"', '27\'-0"']);
    expect(left).toEqual(['A–B 27\'-0"']);
  });

  it('lies to the left of its direction, or to the right with a negative distance', () => {
    const heights = (off: number) =>
      textsOf(explode([bays(108, off)], projection)).map(({ at }) => at.y);
    expect(Math.max(...heights(0.35))).toBeLessThan(5);
    expect(Math.min(...heights(-0.5))).toBeGreaterThan(5);
  });

  it('has a slash at each post and at both ends of the total', () => {
    const atoms = explode([bays(108)], projection);
    const slashes = atoms.flatMap((atom) =>
      atom.do === 'stroke' && atom.pen.width === 0.016 ? [atom.outline.length / 2] : [],
    );
    expect(slashes).toEqual([4, 2]);
  });
});
