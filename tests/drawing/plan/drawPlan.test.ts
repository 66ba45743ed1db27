import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawOnPaper } from '../../../src/drawing/drawOnPaper.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { distance } from '../../../src/geometry/distance.ts';
import type { LengthStyle, LengthSystem } from '../../../src/units/lengthStyle.ts';
import { parseLength } from '../../../src/units/parseLength.ts';
import { anyLines } from '../anyYard.ts';
import { handYard } from '../handYard.ts';
import { overlapsOf, textsOf } from '../textsOf.ts';

type Of<Kind extends Primitive['kind']> = Extract<Primitive, { kind: Kind }>;
const all = <Kind extends Primitive['kind']>(primitives: readonly Primitive[], kind: Kind) =>
  primitives.filter((one): one is Of<Kind> => one.kind === kind);

const lengthOf = (text: string): number => {
  const parsed = parseLength(text);
  if (!parsed.ok) throw new Error(parsed.reason);
  return parsed.value;
};

/** The way from post to post: of an opening what is clear of it stands in the line below. */
const firstLine = (text: string): string => text.split('\n')[0] ?? '';

/** The length of bays written as one: `5 at 9'-0" + 2 at 8'-11"`, `… = 63'-0"`, `…, together 63'-0"`. */
const lengthOfGroup = (text: string): number => {
  const whole = /(?:= |together )(.+)$/.exec(text)?.[1];
  if (whole !== undefined) return lengthOf(whole);
  return text.split(' + ').reduce((so, part) => {
    const [count = '', each = ''] = part.split(' at ');
    return so + Number(count) * lengthOf(each);
  }, 0);
};

/** How many bays are written as one. */
const countOfGroup = (text: string): number =>
  (/=|together/.test(text) ? [text] : text.split(' + ')).reduce(
    (so, part) => so + Number.parseInt(part, 10),
    0,
  );

const styles: LengthStyle[] = (['feet', 'inches', 'decimal feet', 'mm', 'm'] as const).map(
  (system: LengthSystem) => ({ system, fraction: 8 }),
);

const walkGate = handYard([
  {
    corners: [
      { x: 0, y: 0 },
      { x: 600, y: 0 },
      { x: 600, y: 480 },
    ],
    closed: false,
    maxBay: 120,
    gates: [{ leg: 0, from: 240, leaf: 44 }],
  },
]);

describe('drawPlan', () => {
  it.each(styles)('[D12] every chain adds up to its total, written in $system', (style) => {
    fc.assert(
      fc.property(anyLines, (lines) => {
        const { site, layout } = handYard(lines);
        const chains = all(drawPlan(site, layout, { lengths: style }), 'dimension chain');
        expect(chains.length).toBeGreaterThan(0);
        for (const { texts, total } of chains) {
          const added = texts.reduce((so, text) => so + lengthOf(firstLine(text)), 0);
          expect(added).toBeCloseTo(lengthOf(total ?? firstLine(texts[0] ?? '')), 6);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('[D114] a group of bays says as much as its bays together', () => {
    fc.assert(
      fc.property(anyLines, (lines) => {
        const { site, layout } = handYard(lines);
        for (const { texts, groups = [] } of all(drawPlan(site, layout), 'dimension chain')) {
          for (const { from, to, text, shorter } of groups) {
            const parts = texts.slice(from, to).map((own) => lengthOf(firstLine(own)));
            const whole = parts.reduce((so, part) => so + part, 0);
            expect(lengthOfGroup(text)).toBeCloseTo(whole, 9);
            expect(countOfGroup(text)).toBe(to - from);
            if (shorter !== undefined) expect(lengthOfGroup(shorter)).toBeCloseTo(whole, 9);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('[D13] no wire is drawn across an opening, and all other ground is fenced', () => {
    const fences = all(drawPlan(walkGate.site, walkGate.layout), 'fence');
    const spans = fences.map(({ points: [a, b] }) => [a?.x, a?.y, b?.x, b?.y]);
    // 44 + 1 7/8 + 2 of leaf, hinge and latch, and half a post of 2.375 in on each side
    expect(spans).toEqual([
      [0, 0, 240, 0],
      [290.25, 0, 600, 0],
      [600, 0, 600, 480],
    ]);
  });

  it('[D13] a gate is named with the opening to hold', () => {
    const texts = all(drawPlan(walkGate.site, walkGate.layout), 'text').map(({ text }) => text);
    expect(texts).toContain('Gate 1\nopening 3\'-11 7/8"');
  });

  it('a gate that does not fit says so and is drawn as a ghost', () => {
    const [gate] = Object.values(walkGate.layout.gates);
    if (gate === undefined) throw new Error('expected the gate of the hand-made yard');
    const gates = { [gate.id]: { ...gate, placed: false, posts: null } };
    const primitives = drawPlan(walkGate.site, { ...walkGate.layout, gates });
    expect(all(primitives, 'text').map(({ text }) => text)).toContain('Gate 1\ndoes not fit here');
    expect(all(primitives, 'polyline').map(({ pen }) => pen)).toContain('stop');
  });

  it('[D14] every post is a hole with the pipe in it, as large as they are', () => {
    const circles = all(drawPlan(walkGate.site, walkGate.layout), 'circle');
    const posts = [...walkGate.layout.posts.values()];
    const told = (at: { x: number; y: number }, radius: number) => `${at.x} ${at.y} ${radius}`;
    // in the order in which the runs come to them
    expect(circles.map(({ centre, radius }) => told(centre, radius)).toSorted()).toEqual(
      posts.flatMap(({ at, od }) => [told(at, 5), told(at, od / 2)]).toSorted(),
    );
  });

  it('parts can be left away', () => {
    const bare = drawPlan(walkGate.site, walkGate.layout, { omit: ['tags', 'chains'] });
    expect(all(bare, 'dimension chain')).toEqual([]);
    expect(all(bare, 'text')).toHaveLength(1);
  });

  it('dimensions stand outside the ground that the line goes round', () => {
    fc.assert(
      fc.property(anyLines, (lines) => {
        const { site, layout } = handYard(lines.map((line) => ({ ...line, closed: true })));
        for (const { points, off } of all(drawPlan(site, layout), 'dimension chain')) {
          const [a, b] = [points[0], points.at(-1)];
          if (a === undefined || b === undefined) continue;
          const left = { x: (a.y - b.y) / distance(a, b), y: (b.x - a.x) / distance(a, b) };
          // the yards are rings round the origin: outside is away from it
          expect((a.x * left.x + a.y * left.y) * off).toBeGreaterThan(0);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('[D9] no text of a plan overlaps another, whatever the scale', () => {
    const scale = fc.constantFrom(48, 120, 360, 1200);
    fc.assert(
      fc.property(anyLines, scale, (lines, ratio) => {
        const { site, layout } = handYard(lines);
        const at = { origin: { x: -5 * ratio, y: 4 * ratio }, scale: 1 / ratio };
        const window = { minX: 0, minY: 0, maxX: 10, maxY: 8 };
        const { atoms, left } = drawOnPaper(drawPlan(site, layout), at, { window });
        expect(overlapsOf(atoms)).toEqual([]);
        expect(textsOf(atoms).length + left.length).toBeGreaterThan(0);
      }),
      { numRuns: 30 },
    );
  });
});
