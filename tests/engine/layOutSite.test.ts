import { unsurveyed } from '../../src/engine/survey/survey.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loaded, type Loaded } from './load/loadLines.ts';
import { keepOutsOf } from '../../src/engine/keepOut/keepOutsOf.ts';
import { reachInto } from '../../src/engine/keepOut/reachInto.ts';
import { layOutSite } from '../../src/engine/layOutSite.ts';
import { leafTip } from '../../src/engine/gate/swing.ts';
import type { Layout } from '../../src/engine/layout.ts';
import { tapeReadings } from '../../src/engine/posts/tapeReadings.ts';
import { reverseLine } from '../../src/site/edits/reverseLine.ts';
import type { LineId } from '../../src/site/ids.ts';
import type { Site } from '../../src/site/site.ts';
import { randomSite } from './randomSite.ts';
import { bare, fence, firstGate, gateOn, spec } from './plainYard.ts';

type Motion = (x: number, y: number) => readonly [number, number];

/** A motion that turns left into right. */
const mirrors = (motion: Motion): boolean => {
  const [[x, y], [a, b], [c, d]] = [motion(0, 0), motion(1, 0), motion(0, 1)];
  return (a - x) * (d - y) - (b - y) * (c - x) < 0;
};

const otherSide = { left: 'right', right: 'left' } as const;

const movedSite = (site: Site, motion: Motion): Site => ({
  ...site,
  gates: mirrors(motion)
    ? Object.fromEntries(
        Object.entries(site.gates).map(([id, gate]) => [
          id,
          { ...gate, opens: otherSide[gate.opens] },
        ]),
      )
    : site.gates,
  marks: Object.fromEntries(
    Object.entries(site.marks).map(([id, mark]) => {
      const [x, y] = motion(mark.x, mark.y);
      return [id, { ...mark, x, y }];
    }),
  ),
});

/** What stands where: figures to compare within a tolerance, and a name that must be the same. */
interface Fact {
  readonly name: string;
  readonly figures: readonly number[];
}

const byFigures = (a: Fact, b: Fact): number => {
  if (a.name !== b.name) return a.name < b.name ? -1 : 1;
  const n = a.figures.findIndex((figure, k) => Math.abs(figure - (b.figures[k] ?? 0)) > 1e-4);
  return n < 0 ? 0 : (a.figures[n] ?? 0) - (b.figures[n] ?? 0);
};

const sameFacts = (a: Fact[], b: Fact[]): void => {
  const [one, other] = [a.toSorted(byFigures), b.toSorted(byFigures)];
  expect(other.map(({ name }) => name)).toEqual(one.map(({ name }) => name));
  const apart = one.filter(({ figures }, n) =>
    figures.some((figure, k) => !(Math.abs(figure - (other[n]?.figures[k] ?? NaN)) < 1e-4)),
  );
  expect(apart).toEqual([]);
};

/** Posts by place, kind, pipe and hole, whatever they are called and in whatever order. */
const postsOf = (layout: Layout, motion: Motion): Fact[] =>
  [...layout.posts.values()].map(({ at, kind, od, hole, gates }) => ({
    name: [kind, od, hole.diameter, hole.depth, gates.join()].join(' '),
    figures: motion(at.x, at.y),
  }));

const baysOf = (layout: Layout): Fact[] =>
  Object.values(layout.lines).flatMap(({ runs }) =>
    runs.flatMap(({ spaces }) =>
      spaces.map(({ kind, length }) => ({ name: kind, figures: [length] })),
    ),
  );

const loadOf = ({ load }: Loaded): Fact[] =>
  load.map(({ item, count, each }) => ({ name: item, figures: [each ?? 0, count] }));

/** Gates with what moves and what stands in them, wherever the line is drawn from. */
const gatesOf = (layout: Layout, motion: Motion): Fact[] =>
  Object.values(layout.gates).flatMap((gate) => {
    const { id, placed, opening, leaves, slides, stop, receiver } = gate;
    // a gate without a leg stands wherever its line begins
    if (leaves.length + slides.length === 0) {
      return [{ name: `${id} ${placed}`, figures: [opening.target] }];
    }
    const spots = [
      ...leaves.flatMap((leaf) => [leaf.hinge, leafTip(leaf, leaf.turns)]),
      ...slides.flatMap(({ closed, stored }) => [closed.start, closed.end, stored.start]),
    ];
    const fixed = [...(stop === null ? [] : [stop]), ...(receiver === null ? [] : [receiver.at])];
    return [
      { name: `${id} ${placed}`, figures: [opening.target] },
      ...spots.map(({ x, y }) => ({ name: `${id} moves`, figures: motion(x, y) })),
      ...fixed.map(({ x, y }) => ({ name: `${id} stands`, figures: motion(x, y) })),
    ];
  });

const still: Motion = (x, y) => [x, y];

const sameYard = (a: Loaded, b: Loaded, motion: Motion): void => {
  sameFacts(postsOf(a, motion), postsOf(b, still));
  sameFacts(baysOf(a), baysOf(b));
  sameFacts(gatesOf(a, motion), gatesOf(b, still));
  sameFacts(loadOf(a), loadOf(b));
};

describe('layOutSite', () => {
  it('[P2] an empty site has an empty layout', () => {
    const { posts, ...rest } = layOutSite(bare);
    expect([posts.size, ...posts.values()]).toEqual([0]);
    expect(rest).toEqual({
      lines: {},
      gates: {},
      ground: null,
      survey: unsurveyed,
      flags: [],
    });
  });

  it('[P3] the same yard turned, moved or mirrored has the same posts', () => {
    const turnBy = fc.integer({ min: 0, max: 359 }).map((degrees): Motion => {
      const [cos, sin] = [Math.cos, Math.sin].map((of) => of((degrees * Math.PI) / 180));
      return (x, y) => [x * (cos ?? 0) - y * (sin ?? 0), x * (sin ?? 0) + y * (cos ?? 0)];
    });
    const motion = fc.oneof(
      turnBy,
      fc.constantFrom<Motion>(
        (x, y) => [x + 1200.7, y - 360.3],
        (x, y) => [-x, y],
      ),
    );
    fc.assert(
      fc.property(randomSite, motion, (site, move) => {
        sameYard(loaded(site), loaded(movedSite(site, move)), move);
      }),
      { numRuns: 150 },
    );
  });

  it('[P3] the same fence drawn backwards has the same posts', () => {
    fc.assert(
      fc.property(randomSite, fc.nat(2), (site, which) => {
        const lines = Object.keys(site.lines) as LineId[];
        const line = lines[which % lines.length] ?? 'line:0';
        sameYard(loaded(site), loaded(reverseLine(site, line)), still);
      }),
      { numRuns: 150 },
    );
  });

  it('[P4] stations rise, spaces fill the run and no bay is over the maximum but one that is told of', () => {
    fc.assert(
      fc.property(randomSite, (site) => {
        const { lines, flags } = layOutSite(site);
        const runs = Object.values(lines).flatMap((line) => line.runs);
        const told = flags.filter(({ rule }) => rule === 'bay over its maximum').length;
        const over = runs.flatMap(({ spaces }) =>
          spaces.filter(({ kind, length }) => kind === 'bay' && length > spec.maxBay + 1e-6),
        );
        expect(told).toBe(over.length);
        const wrong = runs.filter(({ posts, spaces, length }) => {
          const stations = posts.map(({ station }) => station);
          const steps = stations.slice(1).map((station, n) => station - (stations[n] ?? 0));
          const filled = spaces.every(
            (space, n) => Math.abs(space.length - (steps[n] ?? 0)) < 1e-6,
          );
          const rising = steps.every((step) => step > 0);
          const within = (stations.at(-1) ?? Infinity) <= length + 1e-6;
          return posts.length !== spaces.length + 1 || !filled || !rising || !within;
        });
        expect(wrong).toEqual([]);
      }),
    );
  });

  it('[P16] the hole of a line post reaches into no keep-out', () => {
    fc.assert(
      fc.property(randomSite, (site) => {
        const keepOuts = keepOutsOf(site);
        const inside = [...layOutSite(site).posts.values()].filter(
          ({ kind, at, hole }) =>
            kind === 'line' &&
            keepOuts.some((keepOut) => reachInto(keepOut, at, hole.diameter / 2) > 1e-6),
        );
        expect(inside).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it('[P5] a placed gate has its target, or what was set, between the faces of its posts', () => {
    fc.assert(
      fc.property(randomSite, (site) => {
        const { gates, posts } = layOutSite(site);
        for (const gate of Object.values(gates)) {
          if (gate.posts === null) continue;
          const [a, b] = [posts.get(gate.posts.start), posts.get(gate.posts.end)];
          if (a === undefined || b === undefined) throw new Error('no post');
          const clear = Math.hypot(b.at.x - a.at.x, b.at.y - a.at.y) - (a.od + b.od) / 2;
          // only beside a post that stands at a mark may it be what the fence leaves, give or take
          // the 1/16 in to which a tape is read
          const fixed = Object.values(gate.posts).some((id) => !id.startsWith('post:gate:'));
          const off = Math.abs(clear - gate.stands);
          expect(off).toBeLessThanOrEqual(fixed ? 1 / 16 + 1e-6 : 1e-6);
        }
      }),
    );
  });

  it('[P6] readings are rounded one by one and every chain adds up to its total', () => {
    const hook = fc.constantFrom('start' as const, 'end' as const);
    fc.assert(
      fc.property(randomSite, hook, (site, end) => {
        const runs = Object.values(layOutSite(site).lines).flatMap((line) => line.runs);
        for (const run of runs) {
          const { lead, spaces, tail, total } = tapeReadings(run, end, site.lengths);
          expect(lead + spaces.reduce((a, b) => a + b, 0) + tail).toBe(total);
        }
      }),
    );
  });

  it('[P7] a gate put within reach of the corner hangs from the corner post', () => {
    const site = gateOn(
      fence(bare, [
        [0, 0],
        [600, 0],
        [600, 600],
      ]),
      0,
      { from: 'end', offset: 3 },
    );
    const { gates, posts } = layOutSite(site);
    const gate = gates[firstGate(site)];
    const corner = posts.get(gate?.posts?.end ?? 'post:');
    expect(corner?.kind).toBe('corner');
    expect(corner?.at).toEqual({ x: 600, y: 0 });
    // the larger of the terminal’s 2.375 and the gate post’s 2.875
    expect(corner?.od).toBe(2.875);
    expect(gate?.start.x).toBe(600 - 2.875 - 48);
  });

  it('[P8] two gates put close together share one post midway', () => {
    const line = fence(bare, [
      [0, 0],
      [1200, 0],
    ]);
    const one = gateOn(line, 0, { from: 'start', offset: 200 });
    const site = gateOn(one, 0, { from: 'start', offset: 260 });
    const layout = layOutSite(site);
    const gatePosts = [...layout.posts.values()].filter(({ gates }) => gates.length > 0);
    expect(gatePosts.length).toBe(3);
    expect(gatePosts.filter(({ gates }) => gates.length === 2)[0]?.at.x).toBeCloseTo(
      (200 + 50.875 + 260) / 2,
      9,
    );
  });

  // 48 in opening with 2.375 in posts: 50.375 in between centres; with 4 in posts 10 ft is 124 in.
  // Derived: centres = opening + half of each diameter
  it('[P9] post centres are the opening and half of each post apart', () => {
    const site = gateOn(
      fence(bare, [
        [0, 0],
        [1200, 0],
      ]),
      0,
      { from: 'middle', offset: 0 },
      2,
    );
    const four: Site = {
      ...site,
      specs: { 'spec:six': { ...spec, gatePost: { ...spec.gatePost, od: 4 as never } } },
    };
    const gate = layOutSite(four).gates[firstGate(site)];
    expect((gate?.end.x ?? 0) - (gate?.start.x ?? 0)).toBe(124);
  });

  it('[P10] a fence that ends at a wall stands off it', () => {
    const house = {
      ...fence(bare, [
        [0, 0],
        [600, 0],
      ]),
      features: {
        'feature:house': {
          kind: 'building' as const,
          label: 'House',
          path: {
            'vertex:h1': { mark: 'mark:h1' as const, order: 'a0' },
            'vertex:h2': { mark: 'mark:h2' as const, order: 'a1' },
            'vertex:h3': { mark: 'mark:h3' as const, order: 'a2' },
          },
        },
      },
    };
    const site: Site = {
      ...house,
      marks: {
        ...house.marks,
        'mark:h1': { x: 0, y: -200, label: '', fixed: false },
        'mark:h2': { x: 0, y: 200, label: '', fixed: false },
        'mark:h3': { x: -300, y: 0, label: '', fixed: false },
      },
    };
    const walls = [...layOutSite(site).posts.values()].filter(({ kind }) => kind === 'wall');
    expect(walls.length).toBe(1);
    expect(walls[0]?.at.x).toBeCloseTo(2 + 2.375 / 2, 9);
  });

  it('[P11] a mark passed straight on gets no post, a small turn a line post', () => {
    const straight = layOutSite(
      fence(bare, [
        [0, 0],
        [100, 0],
        [240, 0],
      ]),
    );
    const plain = layOutSite(
      fence(bare, [
        [0, 0],
        [240, 0],
      ]),
    );
    sameFacts(baysOf(straight), baysOf(plain));
    const bent = layOutSite(
      fence(bare, [
        [0, 0],
        [120, 0],
        [240, 20],
      ]),
    );
    expect([...bent.posts.values()].map(({ kind }) => kind).toSorted()).toEqual([
      'bend',
      'end',
      'end',
      'line',
    ]);
  });
});
