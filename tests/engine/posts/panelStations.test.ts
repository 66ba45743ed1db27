import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Run } from '../../../src/engine/layout.ts';
import { panelStations } from '../../../src/engine/posts/panelStations.ts';
import { usualPanels } from '../../../src/engine/usualPanels.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setHook } from '../../../src/site/edits/setHook.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';
import { mixedSite } from '../mixedSite.ts';

const posts = { from: inches(2.5), to: inches(2.5), line: inches(2.5) };
const row = { width: inches(96), last: 'cut', hook: 'start' } as const;

/** What is clear from face to face of the posts at those stations along a length. */
const clears = (length: number, stations: readonly number[], own: typeof posts): number[] => {
  const faces = [0, ...stations, length];
  const thick = (n: number): number =>
    n === 0 ? own.from : n === faces.length - 1 ? own.to : own.line;
  return faces.slice(1).map((at, n) => at - (faces[n] ?? 0) - (thick(n) + thick(n + 1)) / 2);
};

describe('panelStations', () => {
  it('[P25] whole panels from the hook, and the last one cut to what is left', () => {
    // 360 less two halves of 2 1/2 is 357 1/2 clear: three of 96 with three posts, and 62
    const stations = panelStations(inches(360), posts, row);
    expect(stations).toEqual([98.5, 197, 295.5]);
    expect(clears(360, stations, posts)).toEqual([96, 96, 96, 62]);
    const back = panelStations(inches(360), posts, { ...row, hook: 'end' });
    expect(back).toEqual([64.5, 163, 261.5]);
  });

  it('[P25] what is an exact number of panels is not over-counted', () => {
    expect(panelStations(inches(4 * 98.5), posts, row)).toEqual([98.5, 197, 295.5]);
    expect(panelStations(inches(98.5), posts, row)).toEqual([]);
    expect(panelStations(inches(40), posts, row)).toEqual([]);
  });

  it('[P25] a last panel narrower than a foot is not hung: the last two are cut alike', () => {
    // 304 less 2 1/2 is 301 1/2: three whole ones and their posts leave 6
    const stations = panelStations(inches(304), posts, row);
    expect(clears(304, stations, posts)).toEqual([96, 96, 51, 51]);
  });

  it('[P25] all cut alike share what is clear, whatever the posts at the ends measure', () => {
    const stout = { from: inches(6), to: inches(4), line: inches(2.5) };
    const stations = panelStations(inches(360), stout, { ...row, last: 'all equal' });
    // 355 clear, three posts of 2 1/2 between four panels
    for (const own of clears(360, stations, stout)) expect(own).toBeCloseTo(347.5 / 4, 9);
  });

  it('[P25] never wider than a panel, and no panel more than the length needs', () => {
    const length = fc.integer({ min: 16 * 10, max: 16 * 2000 }).map((n) => n / 16);
    fc.assert(
      fc.property(
        length,
        fc.integer({ min: 20 * 16, max: 120 * 16 }).map((n) => n / 16),
        fc.constantFrom('cut' as const, 'all equal' as const),
        fc.constantFrom('start' as const, 'end' as const),
        (long, width, last, hook) => {
          const stations = panelStations(inches(long), posts, {
            width: inches(width),
            last,
            hook,
          });
          const found = clears(long, stations, posts);
          for (const own of found) expect(own).toBeLessThanOrEqual(width + 1e-6);
          // one fewer would leave a panel wider than it is: counted apart, by trying
          let fewest = 1;
          while (fewest * width + (fewest - 1) * 2.5 < long - 2.5 - 1e-6) fewest += 1;
          expect(found.length).toBe(fewest);
          // half a foot at least, but where one panel is all there is or they are as narrow as that
          if (found.length > 1 && width >= 24 && last === 'cut') {
            expect(Math.min(...found)).toBeGreaterThanOrEqual(12 - 1e-6);
          }
        },
      ),
    );
  });

  it('[P25] a width that is none is refused', () => {
    expect(() => panelStations(inches(100), posts, { ...row, width: inches(0) })).toThrow(
      'panel: expected a width above zero, found 0',
    );
  });
});

const { spec: panel } = usualPanels(inches(72));
const yard = (
  spots: readonly (readonly [number, number])[],
  fields: Partial<FenceSpec> = {},
): Site => changeSpec(fence(bare, spots), 'spec:six', { ...panel, ...fields });
const straight = yard([
  [0, 0],
  [360, 0],
]);
const runsOf = (site: Site): readonly Run[] =>
  Object.values(layOutSite(site).lines).flatMap(({ runs }) => runs);
const stationsOf = (site: Site): number[] =>
  runsOf(site).flatMap((run) => run.posts.map(({ station }) => station));

describe('a fence of panels laid out', () => {
  it('[P25] hangs whole panels from where the tape is hooked', () => {
    expect(stationsOf(straight)).toEqual([0, 98.5, 197, 295.5, 360]);
    expect(stationsOf(setHook(straight, 'line:1', 'end'))).toEqual([0, 64.5, 163, 261.5, 360]);
  });

  it('[P25] starts again at the posts of a gate, and cuts no panel wider for a stout gate post', () => {
    const site = gateOn(straight, 0, { from: 'start', offset: 120 });
    const laid = layOutSite(site);
    const odOf = (id: string): number => laid.posts.get(id as `post:${string}`)?.od ?? NaN;
    for (const run of runsOf(site)) {
      run.spaces.forEach((space, n) => {
        if (space.kind !== 'bay') return;
        const [a, b] = [run.posts[n]!, run.posts[n + 1]!];
        expect(space.length - (odOf(a.post) + odOf(b.post)) / 2).toBeLessThanOrEqual(96 + 1e-9);
      });
    }
    expect(laid.flags.filter(({ level }) => level === 'stop')).toEqual([]);
  });

  it('[P26] a longest bay that leaves no room for a panel has it cut; no pull post parts panels', () => {
    const short = changeSpec(straight, 'spec:six', { maxBay: inches(62.5) });
    for (const { spaces } of runsOf(short)) {
      for (const { length } of spaces) expect(length).toBeLessThanOrEqual(62.5 + 1e-9);
    }
    const long = changeSpec(
      yard([
        [0, 0],
        [4000, 0],
      ]),
      'spec:six',
      { pullInterval: inches(600) },
    );
    expect([...layOutSite(long).posts.values()].filter(({ kind }) => kind === 'pull')).toEqual([]);
  });

  it('[P26] ground that is closed to a post moves it, and no panel gets wider than it is', () => {
    const gas = {
      kind: 'utility',
      run: 'buried',
      label: '',
      service: 'gas',
      width: inches(2),
      tolerance: inches(18),
    } as const;
    const over = addFeature(straight, gas, [
      { x: 197, y: -300 },
      { x: 197, y: 300 },
    ]);
    const stations = stationsOf(over);
    expect(stations).not.toContain(197);
    const gaps = stations.slice(1).map((at, n) => at - stations[n]!);
    for (const gap of gaps) expect(gap).toBeLessThanOrEqual(98.5 + 1e-6);
    expect(layOutSite(over).flags.map(({ rule }) => rule)).not.toContain('bay over its maximum');
  });

  it('[P26] no panel of any yard is wider than it is, but across ground that is told', () => {
    fc.assert(
      fc.property(mixedSite, (site) => {
        const laid = layOutSite(site);
        const odOf = (id: string): number => laid.posts.get(id as `post:${string}`)?.od ?? NaN;
        const over = Object.values(laid.lines).flatMap(({ id, runs }) => {
          const spec = site.specs[site.lines[id]!.spec]!;
          const { infill } = spec;
          if (infill.kind !== 'panels') return [];
          return runs.flatMap((run) =>
            run.spaces.flatMap((space, n) => {
              const own = odOf(run.posts[n]!.post) + odOf(run.posts[n + 1]!.post);
              const clear = space.length - own / 2;
              return space.kind === 'bay' && clear > infill.width + 1e-4 ? [clear] : [];
            }),
          );
        });
        const told = laid.flags.some(({ rule }) =>
          ['bay over its maximum', 'bay shorter than a hole', 'too many posts'].includes(rule),
        );
        if (!told) expect(over).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});
