import { describe, expect, it } from 'vitest';
import { wholeRun } from '../../../src/drawing/tape/tapePiece.ts';
import { tapeStrip } from '../../../src/drawing/tape/tapeStrip.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { PostId } from '../../../src/engine/post.ts';
import { litOnTape } from '../../../src/screens/yard/tape/litOnTape.ts';
import { bare, fence, firstGate, gateOn } from '../../engine/plainYard.ts';

const site = gateOn(
  fence(bare, [
    [0, 0],
    [600, 0],
    [600, 300],
  ]),
  0,
  { from: 'middle', offset: 0 },
);
const layout = layOutSite(site);
const { runs } = layout.lines['line:1']!;
const strip = tapeStrip(
  site,
  layout,
  runs.map((run) => wholeRun(run, 'start')),
  { width: 8, style: site.lengths },
);
const nothing = { item: 'Tie', posts: [], lines: [], gates: [] };

describe('what is lit up on the tape', () => {
  it('is nothing for nothing, and for what another line has', () => {
    expect(litOnTape('line:1', strip, null)).toEqual({ under: [], over: [] });
    expect(litOnTape('line:1', strip, { ...nothing, lines: ['line:2'] })).toEqual({
      under: [],
      over: [],
    });
  });

  it('is a ring at every place of a post, a band along every run, and one over an opening', () => {
    const corner = layout.lines['line:1']!.runs[0]!.posts.at(-1)!.post;
    const one = strip.posts.find(({ post }) => post !== corner)!.post;
    // the post at the corner is the last of one run and the first of the next
    const rings = (post: PostId) =>
      litOnTape('line:1', strip, { ...nothing, posts: [post] }).over.length;
    expect(rings(corner)).toBe(2);
    expect(rings(one)).toBe(1);
    expect(litOnTape('line:1', strip, { ...nothing, lines: ['line:1'] }).under).toHaveLength(2);
    const gate = litOnTape('line:1', strip, { ...nothing, gates: [firstGate(site)] });
    expect(gate.under).toHaveLength(1);
    expect(gate.over).toEqual([]);
  });
});
