import { expect, it } from 'vitest';
import { layOutSite } from '../../../../src/engine/layOutSite.ts';
import { postTitle } from '../../../../src/screens/openings/asSet/postTitle.ts';
import type { Site } from '../../../../src/site/site.ts';
import { firstGate } from '../../../engine/plainYard.ts';
import { onlyGate } from '../../../engine/set/setYard.ts';
import { cantilever, gap, swing, wayYard } from '../../../engine/wayYard.ts';

const titles = (site: Site) => {
  const layout = layOutSite(site);
  const gate = layout.gates[firstGate(site)];
  if (gate === undefined) throw new Error('no gate');
  return (['start', 'end'] as const).map((end) => postTitle(onlyGate(site), gate, { layout, end }));
};

it('names a post by what it carries and by its tag on the sheet', () => {
  expect(titles(wayYard(swing))).toEqual(['Hinge post (B)', 'Latch post (C)']);
  expect(titles(wayYard(swing, 2))).toEqual(['Post of leaf 1 (B)', 'Post of leaf 2 (C)']);
  expect(titles(wayYard(cantilever))).toEqual(['Roller post (B)', 'Latch post (C)']);
});

it('a gap hangs nothing: its posts have their tags alone', () => {
  expect(titles(wayYard(gap))).toEqual(['Post B', 'Post C']);
});

it('a gate without a place has posts without tags', () => {
  const site = wayYard(swing);
  const at = { posts: null };
  const where = { layout: layOutSite(site), end: 'start' } as const;
  expect(postTitle(onlyGate(site), at, where)).toBe('Hinge post');
  expect(postTitle(onlyGate(wayYard(gap)), at, where)).toBe('Post at the start');
});
