import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { distance } from '../../../src/geometry/distance.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { extendLine } from '../../../src/site/edits/extendLine.ts';
import { setCounting } from '../../../src/site/edits/setCounting.ts';
import { splitLeg } from '../../../src/site/edits/splitLeg.ts';
import type { Counting } from '../../../src/site/counting.ts';
import type { FenceLine } from '../../../src/site/fenceLine.ts';
import type { LineId } from '../../../src/site/ids.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { countRules } from '../../../src/trade/countRules.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../plainYard.ts';
import { mixedSite } from '../mixedSite.ts';
import { randomSite } from '../randomSite.ts';
import { loadLines } from './loadLines.ts';

const run = fence(bare, [
  [0, 0],
  [648, 0],
]);

const counted = (fields: Partial<Counting>, code: string) =>
  loadLines(setCounting(run, fields)).find((line) => line.code.split(' ')[0] === code);

/** How many there are of every item, those of one code together. */
const totals = (site: Site): ReadonlyMap<string, number> => {
  const all = new Map<string, number>();
  for (const { code, count } of loadLines(site)) all.set(code, (all.get(code) ?? 0) + count);
  return all;
};

describe('a company’s own way of counting', () => {
  it('[L9] its spacings, numbers and spares take the place of the usual ones', () => {
    // 648 in of rail at 18 in; one fewer up 72 in at 14: ⌈72 ÷ 14⌉ − 1 = 5 on five posts
    expect(counted({ railTies: inches(18) }, 'tie-rail')?.count).toBe(36);
    expect(counted({ postTies: inches(14) }, 'tie-post')?.count).toBe(25);
    expect(counted({ times: { 'truss-rod': 2 } }, 'truss-rod')?.count).toBe(4);
    expect(counted({ times: { 'hog-ring': 0 } }, 'hog-ring')).toBeUndefined();
    // 27 and a half more
    expect(counted({ spares: { 'tie-rail': 3 / 4 } }, 'tie-rail')?.sold).toMatchObject({
      count: 1,
    });
    expect(counted({ spares: { 'tension-bar': 0.5 } }, 'tension-bar')?.sold).toMatchObject({
      count: 3,
      left: 1,
    });
    expect(counted({ barShort: inches(3) }, 'tension-bar')?.each).toBe(69);
  });

  it('[L9] bags, gravel, sleeves and long pipe as it has them', () => {
    const net = counted({}, 'concrete')?.count ?? 0;
    // 0.45 cu ft to a bag of 60 lb: common practice, no published source
    expect(counted({ bag: 60 }, 'concrete')?.sold?.count).toBe(Math.ceil(net / 0.45));
    // π/4 × 8² × 6 on five holes and 10² on two, in cubic feet
    const gravel = (Math.PI / 4) * 6 * (5 * 8 ** 2 + 2 * 10 ** 2);
    expect(counted({ gravel: inches(6) }, 'gravel')?.count).toBeCloseTo(gravel / 1728, 9);
    expect(counted({ railJoint: 'sleeve' }, 'sleeve')?.count).toBe(2);
    const { tickets } = loadOf(
      setCounting(run, { postStick: inches(252) }),
      layOutSite(setCounting(run, { postStick: inches(252) })),
    );
    const posts = tickets.filter(({ kind }) => kind === 'post');
    // five of 100 in, two to a stick of 252; two of 104 in
    expect(posts.map(({ ticket }) => ticket.bought)).toEqual([3, 1]);
  });

  it('[L9] one that cannot be is refused, and the same again is no change', () => {
    expect(() => setCounting(run, { roll: inches(0) })).toThrow('counting › roll');
    expect(() => setCounting(run, { spares: { bolt: 2 } })).toThrow('counting › spares › bolt');
    expect(setCounting(run, { roll: inches(600) })).toBe(run);
  });
});

describe('counts of any yard', () => {
  it('[L5] a leg that is split at a bend of nothing changes no count', () => {
    const rounded = (site: Site) =>
      [...totals(site)].map(([code, count]) => `${code} ${count.toFixed(6)}`).toSorted();
    const across = fc.integer({ min: 1, max: 63 }).map((n) => n / 64);
    fc.assert(
      fc.property(mixedSite, fc.nat(20), across, (site, which, share) => {
        const legs = (Object.entries(site.lines) as [LineId, FenceLine][]).flatMap(([id, line]) =>
          // a closed line of two marks has no way round until a third one is set
          line.closed && Object.keys(line.path).length < 3
            ? []
            : legsOf(line).map((leg) => ({ id, leg })),
        );
        const found = legs[which % legs.length];
        const [start, end] = [found?.leg.start, found?.leg.end].map(
          (mark) => site.marks[mark ?? 'mark:'],
        );
        if (found === undefined || start === undefined || end === undefined) return;
        // a mark that others stand on would part the fence there
        const at = {
          x: start.x + (end.x - start.x) * share,
          y: start.y + (end.y - start.y) * share,
        };
        fc.pre(Object.values(site.marks).every((mark) => distance(mark, at) > 1));
        fc.pre(distance(start, end) > 48);
        const split = splitLeg(site, found.id, found.leg.id, at);
        expect(rounded(split)).toEqual(rounded(site));
      }),
      { numRuns: 120 },
    );
  });

  it('[L5] every piece of fabric has a bar at both ends, and fittings add up over posts', () => {
    fc.assert(
      fc.property(randomSite, (site) => {
        const lines = loadLines(site);
        const sum = (rule: string) =>
          lines
            .filter(({ code }) => code.split(' ')[0] === rule)
            .reduce((all, { count }) => all + count, 0);
        const pieces = loadOf(site, layOutSite(site)).tickets.filter(
          ({ kind }) => kind === 'fabric',
        );
        const names = new Set(
          pieces.flatMap(({ ticket }) =>
            ticket.sticks.flatMap((one) => one.pieces.map((p) => p.for)),
          ),
        );
        expect(sum('tension-bar')).toBeGreaterThanOrEqual(2 * names.size);
        expect(sum('bolt') + sum('bolt-large')).toBe(
          sum('tension-band') + sum('brace-band-rail') + sum('brace-band-rod'),
        );
        expect(sum('tightener')).toBe(sum('truss-rod'));
        // a cap on every post of fence and gate
        const standing = [...layOutSite(site).posts.values()].filter(
          ({ kind }) => !['roller', 'hold-open', 'stop'].includes(kind),
        );
        expect(sum('loop-cap') + sum('post-cap')).toBe(standing.length);
        for (const { count } of lines) expect(count).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });

  it('[L5] more fence never takes less of anything', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2400 }),
        fc.integer({ min: 1, max: 600 }),
        (long, more) => {
          const straight = fence(bare, [
            [0, 0],
            [long, 0],
          ]);
          const longer = extendLine(straight, 'line:1', { x: long, y: more }, 'end');
          const [before, after] = [totals(straight), totals(longer)];
          for (const { id } of countRules) {
            const of = (all: ReadonlyMap<string, number>) =>
              [...all].reduce((n, [code, count]) => (code.split(' ')[0] === id ? n + count : n), 0);
            expect(of(after)).toBeGreaterThanOrEqual(of(before) - 1e-6);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
