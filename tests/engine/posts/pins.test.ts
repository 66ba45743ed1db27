import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addPin } from '../../../src/site/edits/addPin.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { LineId } from '../../../src/site/ids.ts';
import type { Pin } from '../../../src/site/pin.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';

const straight = (length: number): Site =>
  fence(bare, [
    [0, 0],
    [length, 0],
  ]);

const pinned = (site: Site, offset: number, holds: Pin['holds']): Site => {
  const line = Object.keys(site.lines)[0] as LineId;
  const leg = legsOf(site.lines[line] ?? { path: {}, closed: false })[0]?.id ?? 'vertex:';
  return addPin(site, { line, leg, anchor: { from: 'start', offset: inches(offset) }, holds });
};

const runOf = (site: Site) => {
  const layout = layOutSite(site);
  const [run] = Object.values(layout.lines).flatMap(({ runs }) => runs);
  if (run === undefined) throw new Error('expected a run');
  return { layout, run, stations: run.posts.map(({ station }) => station) };
};

describe('posts held and ground kept clear by hand', () => {
  it('[P19] a held post stands where it is held, and the rest is divided round it', () => {
    const { stations, run, layout } = runOf(pinned(straight(600), 250, { kind: 'post' }));
    expect(stations).toEqual([0, 250 / 3, 500 / 3, 250, 250 + 350 / 3, 250 + 700 / 3, 600]);
    expect(layout.posts.get('post:pin:1')?.kind).toBe('line');
    expect(new Set(run.spaces.map((space) => space.kind === 'bay' && space.stretch))).toEqual(
      new Set([1]),
    );
    expect(layout.flags).toEqual([]);
  });

  it('[P19] ground kept clear has no part of a hole within its reach', () => {
    // equal bays would put posts at 120 and 240; the hole of a line post is 8 in across
    const { stations, layout } = runOf(
      pinned(straight(360), 240, { kind: 'clear', reach: inches(10) }),
    );
    expect(stations.slice(1, -1).every((at) => Math.abs(at - 240) >= 14 - 1e-9)).toBe(true);
    expect(layout.flags).toEqual([]);
  });

  it('[F19] a post held in an opening or past the leg is kept, told and not built', () => {
    const gated = gateOn(straight(600), 0, { from: 'start', offset: 100 });
    for (const offset of [120, 700]) {
      const { layout } = runOf(pinned(gated, offset, { kind: 'post' }));
      expect(layout.flags.map(({ level, rule }) => `${level}: ${rule}`)).toEqual([
        'settle: held post without a place',
      ]);
      expect(layout.posts).not.toHaveProperty('post:pin:1');
    }
  });

  it('[P20] a long stretch has pull posts of the terminal pipe, in letters, and new stretches behind', () => {
    const site = changeSpec(straight(14_400), 'spec:six', { pullInterval: inches(6000) });
    const { layout, run } = runOf(site);
    const pulls = [...layout.posts.values()].filter(({ kind }) => kind === 'pull');
    expect(pulls.map(({ at, od, tag }) => [Math.round(at.x), od, tag])).toEqual([
      [4800, 2.375, 'B'],
      [9600, 2.375, 'C'],
    ]);
    const stretches = run.spaces.flatMap((space) => (space.kind === 'bay' ? [space.stretch] : []));
    expect([stretches[0], stretches[60], stretches.at(-1)]).toEqual([1, 2, 3]);
    expect(layout.flags).toEqual([]);
  });

  it('[F20] a stretch that no pull post can part is told', () => {
    // one bay: no line post could be one
    const site = changeSpec(straight(110), 'spec:six', { pullInterval: inches(100) });
    expect(runOf(site).layout.flags.map(({ rule }) => rule)).toEqual(['stretch over its pull']);
  });
});
