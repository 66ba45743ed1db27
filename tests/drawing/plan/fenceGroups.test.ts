import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fenceGroups } from '../../../src/drawing/plan/fenceGroups.ts';
import { padGroups } from '../../../src/drawing/plan/padPlan.ts';
import { newCarry, type Pieces } from '../../../src/engine/carry/carry.ts';
import { layOutFrom, type Laying } from '../../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Layout } from '../../../src/engine/layout.ts';
import { isTerminal, standsByGate, type Post } from '../../../src/engine/post.ts';
import type { Site } from '../../../src/site/site.ts';
import { randomSite } from '../../engine/randomSite.ts';
import { after, anyMove } from '../../site/edits/anyEdits.ts';

/** Every post once, at the run that comes to it first, by going through all runs one post after the other. */
const postsInTurn = ({ lines, posts }: Layout): Post[] => {
  const met = new Set<Post>();
  for (const { runs } of Object.values(lines))
    for (const run of runs)
      for (const { post } of run.posts) {
        const found = posts.get(post);
        if (found !== undefined) met.add(found);
      }
  return [...met, ...[...posts.values()].filter(standsByGate)];
};

const written = (site: Site) => ({ lengths: site.lengths, tapes: undefined });

describe('fenceGroups', () => {
  it('draws every post once, and where lines meet with the run that comes to it first', () => {
    fc.assert(
      fc.property(randomSite, (site) => {
        const layout = layOutSite(site);
        const { posts, tags } = fenceGroups(site, layout, written(site), newCarry());
        const inTurn = postsInTurn(layout);
        const centres = posts.flat(2).flatMap((one) => ('centre' in one ? [one.centre] : []));
        // a hole and a pipe each
        expect(centres).toEqual(inTurn.flatMap(({ at }) => [at, at]));
        const said = tags.flat(2).flatMap((one) => (one.kind === 'text' ? [one.text] : []));
        const beside = inTurn.filter(standsByGate);
        const called = inTurn.filter((post) => !standsByGate(post));
        expect(said).toEqual(
          [
            ...called.filter((post) => !isTerminal(post)),
            ...called.filter(isTerminal),
            ...beside,
          ].map(({ tag }) => tag),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('leads by any edits to the plan that is drawn from nothing, and leaves all groups that are alike', () => {
    fc.assert(
      fc.property(randomSite, fc.array(anyMove, { maxLength: 6 }), (first, moves) => {
        let [site, laying, pieces]: [Site, Laying | null, Pieces | undefined] = [
          first,
          null,
          undefined,
        ];
        for (const move of [null, ...moves, null]) {
          if (move !== null) site = after(site, move);
          laying = layOutFrom(site, laying);
          const carry = newCarry(pieces);
          const now = padGroups(site, laying.layout, carry);
          expect(now).toEqual(padGroups(site, laying.layout, newCarry()));
          const again = padGroups(site, laying.layout, newCarry(carry.pieces));
          expect(again.every((group, n) => group === now[n])).toBe(true);
          pieces = carry.pieces;
        }
      }),
      { numRuns: 40 },
    );
  });
});
