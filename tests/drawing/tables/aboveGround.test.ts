import { describe, expect, it } from 'vitest';
import { aboveGround } from '../../../src/drawing/tables/aboveGround.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import { inches } from '../../../src/units/inches.ts';
import { cantilever, wayYard } from '../../engine/wayYard.ts';
import { handYard } from '../handYard.ts';

const { site, layout } = handYard([
  {
    corners: [
      { x: 0, y: 0 },
      { x: 330, y: 0 },
    ],
    closed: false,
    maxBay: 120,
    gates: [{ leg: 0, from: 120, leaf: 44 }],
  },
]);

/** The yard with some of its posts as high as is told, by tag; all others stand 72 in over the ground. */
const said = (heights: Readonly<Record<string, number>>): string | null => {
  const posts: Layout['posts'] = new Map(
    [...layout.posts.values()].map((post) => [
      post.id,
      { ...post, above: inches(heights[post.tag] ?? 72) },
    ]),
  );
  const line = layout.lines['line:1'];
  if (line === undefined) throw new Error('expected the line of the hand-made yard');
  return aboveGround(line, { ...layout, posts }, site);
};

describe('aboveGround', () => {
  it('[D133] heights over the ground are said once where they are alike', () => {
    expect(said({})).toBe('Above ground: all posts 72".');
    // what is written alike is alike
    expect(said({ A: 72 + 1e-7 })).toBe('Above ground: all posts 72".');
    // of A, C, D, 1 and B the fourth is the line post
    expect(said({ 1: 70 })).toBe('Above ground: line posts 70", all others 72".');
  });

  it('[D133] and not where they differ', () => {
    expect(said({ D: 80, 1: 70 })).toBeNull();
    expect(said({ A: 80 })).toBeNull();
  });

  it('[D133] posts that stand for a gate count with the others', () => {
    const yard = wayYard(cantilever);
    const laid = layOutSite(yard);
    const [line] = Object.values(laid.lines);
    const roller = [...laid.posts.values()].find(({ kind }) => kind === 'roller');
    if (line === undefined || roller === undefined) throw new Error('expected a roller post');
    expect(aboveGround(line, laid, yard)).not.toBeNull();
    const risen = { ...roller, above: inches(roller.above + 30) };
    const posts = new Map(
      [...laid.posts.values()].map((post) => [post.id, post === roller ? risen : post]),
    );
    expect(aboveGround(line, { ...laid, posts }, yard)).toBeNull();
  });
});
