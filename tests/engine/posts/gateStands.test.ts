import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Post } from '../../../src/engine/post.ts';
import type { Site } from '../../../src/site/site.ts';
import { loadLines } from '../load/loadLines.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { firstGate } from '../plainYard.ts';
import { cantilever, centreStop, swing, wayYard } from '../wayYard.ts';

const stands = (site: Site, kind: Post['kind']): Post[] =>
  [...layOutSite(site).posts.values()].filter((post) => post.kind === kind);

const faces = (site: Site): { start: number; end: number } => {
  const gate = layOutSite(site).gates[firstGate(site)];
  const half = (gate?.opening.target ?? NaN) / 2;
  return { start: (gate?.middle.x ?? NaN) - half, end: (gate?.middle.x ?? NaN) + half };
};

describe('gateStands', () => {
  // posts of 4.000 in OD, the first in line with the opening, offset behind the fence: common
  // practice, no published source
  it('[W3] two roller posts stand behind the fence, the first in line with the opening', () => {
    const site = wayYard(cantilever);
    const { start } = faces(site);
    expect(stands(site, 'roller').map(({ at, od, tag }) => [at.x, at.y, od, tag])).toEqual([
      [start - 2, 6, 4, 'R1'],
      [start - 2 - 54, 6, 4, 'R2'],
    ]);
  });

  it('[W3] where the first would touch the gate post, the gate post is the first', () => {
    const site = wayYard({ ...cantilever, behind: inches(3), stores: 'end' }, 1, {
      opens: 'right',
    });
    const { end } = faces(site);
    const own = 2.875 / 2;
    const [only, ...more] = stands(site, 'roller').map(({ at }) => at);
    expect(only?.x).toBeCloseTo(end + own + 54, 9);
    expect(only?.y).toBeCloseTo(-3, 9);
    expect(more).toEqual([]);
  });

  it('[W3] each leaf of two has rollers of its own, of the pipe of the gate where that is said', () => {
    const post = {
      label: '6-5/8',
      od: inches(6.625),
      wall: inches(0.28),
      section: 'round' as const,
    };
    const site = wayYard(cantilever, 2, { post });
    const rollers = stands(site, 'roller');
    expect(rollers.map(({ od }) => od)).toEqual([6.625, 6.625]);
    expect(
      stands(wayYard({ ...cantilever, behind: inches(12) }, 2, { post }), 'roller').length,
    ).toBe(4);
  });

  it('[W3] rollers are holes on the load list, and no fence hangs from them', () => {
    const site = wayYard(cantilever);
    const { lines, posts } = layOutSite(site);
    const rollers = [...posts.values()].filter(({ kind }) => kind === 'roller');
    // ASTM F567-07 5.1: four times an OD of 4 in, and 24 in and 3 for each foot over 4 ft
    expect(rollers.map(({ hole }) => [hole.diameter, hole.depth])).toEqual([
      [16, 30],
      [16, 30],
    ]);
    const line = loadLines(site).find(({ item }) => item.startsWith('Roller post'));
    expect(line?.count).toBe(2);
    expect(line?.of.posts).toEqual(rollers.map(({ id }) => id));
    const onRuns = Object.values(lines).flatMap(({ runs }) => runs.flatMap((run) => run.posts));
    expect(onRuns.filter(({ post }) => rollers.some(({ id }) => id === post))).toEqual([]);
  });

  it('[W3] a post holds each leaf open at its tip, against its far face', () => {
    const site = wayYard(swing, 2, { holdOpen: true, opens: 'right' });
    const { start, end } = faces(site);
    const [pin, leaf, thick, od] = [0.9375, 56.875, 1.66, 1.9];
    const posts = stands(site, 'hold-open');
    expect(posts.map(({ at, tag }) => [at.x, at.y, tag])).toEqual([
      [expect.closeTo(start + pin - (thick + od) / 2, 9), expect.closeTo(-pin - leaf, 9), 'H1'],
      [expect.closeTo(end - pin + (thick + od) / 2, 9), expect.closeTo(-pin - leaf, 9), 'H2'],
    ]);
    const flat = wayYard({ kind: 'swing', turns: radians(Math.PI) }, 1, { holdOpen: true });
    expect(stands(flat, 'hold-open')[0]?.at.y).toBeCloseTo(-(thick + od) / 2, 9);
  });

  it('[W3] a stop between two leaves is a post with a hole, on the load list and on no run', () => {
    const site = wayYard(centreStop);
    const layout = layOutSite(site);
    const [stop, ...more] = stands(site, 'stop');
    const gate = layout.gates[firstGate(site)];
    expect(more).toEqual([]);
    expect(stop?.at).toEqual(gate?.stop);
    // ASTM F567-07 5.1: four times an OD of 4 in, and 24 in and 3 for each foot over 4 ft
    expect(stop).toMatchObject({ tag: 'S1', od: 4, pipe: '4 schedule 40' });
    expect([stop?.hole.diameter, stop?.hole.depth]).toEqual([16, 30]);
    const counted = loadLines(site).find(({ item }) => item === 'Centre stop post, 4 schedule 40');
    expect(counted).toMatchObject({ count: 1, each: (stop?.above ?? 0) + 30 });
    const onRuns = Object.values(layout.lines).flatMap(({ runs }) =>
      runs.flatMap((run) => run.posts.map(({ post }) => post)),
    );
    expect(onRuns).not.toContain(stop?.id);
  });

  it('[W3] a stop as wide as no pipe of the table is named by its width', () => {
    const site = wayYard({ ...centreStop, stop: inches(3) });
    expect(stands(site, 'stop')[0]?.pipe).toBe('3" across');
  });

  it('[W3] a gate that is not placed has none', () => {
    const site = wayYard(swing, 2, {
      holdOpen: true,
      anchor: { from: 'start', offset: inches(590) },
    });
    expect(stands(site, 'hold-open')).toEqual([]);
  });
});
