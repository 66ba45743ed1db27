import { describe, expect, it } from 'vitest';
import type { Atom } from '../../../src/drawing/atom.ts';
import { explode } from '../../../src/drawing/explode.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { segmentIntersection } from '../../../src/geometry/segmentIntersection.ts';
import { textsOf } from '../textsOf.ts';

/** Four posts on 9 ft of fence, at 1 in = 10 ft: no length fits on its piece. */
const chainAlong = (x: number, y: number): Primitive => ({
  kind: 'dimension chain',
  points: [0, 34, 74, 112].map((at) => ({ x: 600 + at * x, y: 600 + at * y })),
  texts: ['2\'-10"', '3\'-3 7/8"', '3\'-2 1/8"'],
  total: null,
  off: 0.36,
});

const leadersOf = (atoms: readonly Atom[]) =>
  atoms.flatMap((atom) => {
    if (atom.do !== 'stroke' || atom.outline.length !== 2) return [];
    const [from, to] = atom.outline;
    return from?.go === 'move' && to?.go === 'line' ? [{ start: from, end: to }] : [];
  });

describe('ledOutRow', () => {
  it.each([
    ['east', 1, 0],
    ['north', 0, 1],
    ['west', -1, 0],
    ['north-east', Math.SQRT1_2, Math.SQRT1_2],
  ])('[D27] going %s, lengths keep the order of their pieces', (_, x, y) => {
    const atoms = explode([chainAlong(x, y)], { origin: { x: 0, y: 1200 }, scale: 1 / 120 });
    const along = textsOf(atoms)
      .map(({ text, at }) => ({ text, station: at.x * x - at.y * y }))
      .sort((a, b) => a.station - b.station);
    expect(along.map(({ text }) => text)).toEqual(['2\'-10"', '3\'-3 7/8"', '3\'-2 1/8"']);
    const leaders = leadersOf(atoms);
    expect(leaders).toHaveLength(3);
    leaders.forEach((one, n) => {
      for (const other of leaders.slice(n + 1)) expect(segmentIntersection(one, other)).toBeNull();
    });
  });
});
