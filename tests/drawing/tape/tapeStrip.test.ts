import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wholeRun } from '../../../src/drawing/tape/tapePiece.ts';
import { stationAt, xAt } from '../../../src/drawing/tape/tapeReach.ts';
import { tapeStrip } from '../../../src/drawing/tape/tapeStrip.ts';
import { anyLines } from '../anyYard.ts';
import { tapeLevels } from '../../../src/drawing/tape/tapeLevels.ts';
import { LetteredBefore } from '../../../src/drawing/lettering/letteredBefore.ts';
import { layOutFrom, type Laying } from '../../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { moveGate } from '../../../src/site/edits/moveGate.ts';
import { setGateOpens } from '../../../src/site/edits/setGateOpens.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { bare, fence as fenceOf, firstGate, gateOn } from '../../engine/plainYard.ts';
import { randomSite } from '../../engine/randomSite.ts';
import { wayYard } from '../../engine/wayYard.ts';
import { after, anyMove } from '../../site/edits/anyEdits.ts';
import { handYard } from '../handYard.ts';
import { overlapsOf, textsOf } from '../textsOf.ts';

const style = { system: 'feet', fraction: 8 } as const;
const { site, layout } = handYard([
  {
    corners: [
      { x: 0, y: 0 },
      { x: 600, y: 0 },
      { x: 600, y: 480 },
    ],
    closed: false,
    maxBay: 120,
    gates: [{ leg: 0, from: 240, leaf: 44 }],
  },
]);
const runs = layout.lines['line:1']?.runs ?? [];
const strip = (hook: 'start' | 'end', width = 10) =>
  tapeStrip(
    site,
    layout,
    runs.map((run) => wholeRun(run, hook)),
    { width, style },
  );
const readings = (hook: 'start' | 'end', width = 10): string[] =>
  textsOf(strip(hook, width).atoms)
    .filter(({ angle }) => angle !== 0)
    .toSorted((a, b) => a.at.x - b.at.x)
    .map(({ text }) => text);

describe('tapeStrip', () => {
  it('[D16] every post has the reading of a tape hooked at the start of its run', () => {
    // 3 bays of 103 1/4 in from 290 1/4 to 600: 393 1/2, 496 3/4
    expect(readings('start').slice(0, 7)).toEqual([
      '0"',
      '10\'-0"',
      '20\'-0"',
      '24\'-2 1/4"',
      '32\'-9 1/2"',
      '41\'-4 3/4"',
      '50\'-0"',
    ]);
    expect(readings('start').slice(7)).toEqual(['0"', '10\'-0"', '20\'-0"', '30\'-0"', '40\'-0"']);
  });

  it('[D16] hooked at the end, it counts from there', () => {
    expect(readings('end').slice(0, 7)).toEqual([
      '50\'-0"',
      '40\'-0"',
      '30\'-0"',
      '25\'-9 3/4"',
      '17\'-2 1/2"',
      '8\'-7 1/4"',
      '0"',
    ]);
  });

  it('[D134] printed, it has the readings from the other end lighter under the others', () => {
    const pieces = runs.map((run) => wholeRun(run, 'start'));
    const both = tapeStrip(site, layout, pieces, { width: 10, style, otherEnd: 'shown' });
    const upright = textsOf(both.atoms).filter(({ angle }) => angle !== 0);
    const lower = upright.filter(({ at }) => at.y > tapeLevels.readings + 0.2);
    expect(lower.toSorted((a, b) => a.at.x - b.at.x).map(({ text }) => text)).toEqual([
      ...readings('end').slice(0, 7),
      '40\'-0"',
      '30\'-0"',
      '20\'-0"',
      '10\'-0"',
      '0"',
    ]);
    expect(lower.every(({ ink, weight }) => ink === 'dimension' && weight === 'regular')).toBe(
      true,
    );
    expect(overlapsOf(both.atoms)).toEqual([]);
    expect(both.height).toBeGreaterThan(strip('start').height + 0.5);
  });

  it('[D17] posts and gates can be found where they are drawn', () => {
    const { reaches, posts, gates } = strip('start');
    const [first, second] = reaches;
    if (first === undefined || second === undefined) throw new Error('expected two reaches');
    const [run] = runs;
    run?.posts.forEach(({ station }, n) => {
      expect(posts[n]?.x).toBeCloseTo(xAt(first, station), 9);
      expect(stationAt(first, posts[n]?.x ?? 0)).toBeCloseTo(station, 6);
    });
    expect(gates).toHaveLength(1);
    expect(stationAt(first, gates[0]?.from ?? 0)).toBeCloseTo(240, 6);
    expect(stationAt(first, gates[0]?.to ?? 0)).toBeCloseTo(290.25, 6);
    expect(xAt(first, 600)).toBeLessThan(second.x);
    expect(stationAt(first, 100)).toBe(600);
  });

  it('fills the width asked for, or grows beyond it to its least scale', () => {
    expect(strip('start').width).toBeCloseTo(10, 9);
    const pieces = runs.map((run) => wholeRun(run, 'start'));
    const wide = tapeStrip(site, layout, pieces, { width: 10, style, leastScale: 1 / 48 });
    expect(wide.width).toBeGreaterThan(1080 / 48);
  });

  it('[D9] no text overlaps another; what finds no room is named', () => {
    fc.assert(
      fc.property(anyLines, fc.constantFrom(4, 7.5, 20), (lines, width) => {
        const yard = handYard(lines);
        for (const line of Object.values(yard.layout.lines)) {
          const pieces = line.runs.map((run) => wholeRun(run, 'start'));
          const { atoms, left, height } = tapeStrip(yard.site, yard.layout, pieces, {
            width,
            style,
          });
          expect(overlapsOf(atoms)).toEqual([]);
          const upright = textsOf(atoms).filter(({ angle }) => angle !== 0).length;
          const posts = line.runs.reduce((so, run) => so + run.posts.length, 0);
          expect(upright + left.filter((text) => text.includes(' at ')).length).toBe(posts);
          expect(height).toBeLessThan(3);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('names its openings with the width to hold', () => {
    expect(textsOf(strip('start').atoms).map(({ text }) => text)).toContain(
      'Gate 1: hold 3\'-11 7/8"',
    );
  });

  it('is empty for no pieces', () => {
    expect(tapeStrip(site, layout, [], { width: 10, style }).atoms).toEqual([]);
  });

  it('[D67] shows to which side each leaf turns, and how far along the tape its tip goes', () => {
    const one = wayYard({ kind: 'swing', turns: radians(Math.PI / 2) });
    const stripOf = (of: Site) => {
      const laid = layOutSite(of);
      const pieces = Object.values(laid.lines).flatMap((line) =>
        line.runs.map((run) => wholeRun(run, 'start')),
      );
      return { ...tapeStrip(of, laid, pieces, { width: 10, style }), laid };
    };
    const waysOf = (of: Site): number[] => {
      const { atoms } = stripOf(of);
      return atoms.flatMap((atom) =>
        atom.do === 'stroke' && atom.pen.ink === 'gate' && atom.pen.width === 0.009
          ? (JSON.stringify(atom.outline)
              .match(/"y":[0-9.]+/g)
              ?.map((y) => Number(y.slice(4))) ?? [])
          : [],
      );
    };
    const { fence } = tapeLevels;
    const [left, right] = [waysOf(one), waysOf(setGateOpens(one, firstGate(one), 'right'))];
    expect(left.length).toBeGreaterThan(12);
    expect(Math.min(...left)).toBeCloseTo(fence - 0.15, 9);
    expect(Math.max(...left)).toBeCloseTo(fence, 9);
    expect(Math.max(...right)).toBeCloseTo(fence + 0.15, 9);
    expect(Math.min(...right)).toBeCloseTo(fence, 9);
  });
});

describe('a strip of which a part is seen', () => {
  const many = handYard([
    {
      corners: Array.from({ length: 13 }, (_, n) => ({ x: n * 600, y: n % 2 === 0 ? 0 : 480 })),
      closed: false,
      maxBay: 120,
      gates: [{ leg: 6, from: 240, leaf: 44 }],
    },
  ]);
  const pieces = (many.layout.lines['line:1']?.runs ?? []).map((run) => wholeRun(run, 'start'));
  const drawn = (seen?: { from: number; to: number }) =>
    tapeStrip(many.site, many.layout, pieces, {
      width: 10,
      style,
      leastScale: 0.42 / 120,
      ...(seen === undefined ? {} : { seen }),
    });

  it('[D159] has there what the whole has, as wide and as high wherever it is seen', () => {
    const whole = drawn();
    const heights = new Set<number>();
    for (let from = 0; from + 10 < whole.width; from += 5) {
      const part = drawn({ from: from - 10, to: from + 20 });
      const here = (texts: ReturnType<typeof textsOf>) =>
        texts.filter(({ at }) => at.x >= from && at.x <= from + 10);
      expect(here(textsOf(part.atoms))).toEqual(here(textsOf(whole.atoms)));
      expect(part.atoms.length).toBeLessThan(whole.atoms.length);
      expect(part).toMatchObject({ width: whole.width, gates: whole.gates, posts: whole.posts });
      expect(part.height).toBeGreaterThanOrEqual(whole.height);
      heights.add(part.height);
    }
    expect(heights.size).toBe(1);
  });
});

describe('a strip of which parts were drawn before', () => {
  it('is as one from nothing, along any edits and wherever it is seen', () => {
    const anyView = fc.record({ width: fc.constantFrom(4, 10), from: fc.nat(30), hook: fc.nat(3) });
    const steps = fc.array(fc.tuple(fc.option(anyMove), anyView), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(randomSite, steps, (first, all) => {
        const before = new LetteredBefore();
        let [now, laying]: [Site, Laying] = [first, layOutFrom(first, null)];
        for (const [move, { width, from, hook }] of all) {
          if (move !== null) now = after(now, move);
          laying = layOutFrom(now, laying);
          const [line] = Object.values(laying.layout.lines);
          const taped = (line?.runs ?? []).map((run) =>
            wholeRun(run, hook === 0 ? 'end' : 'start'),
          );
          const how = { width, style, leastScale: 0.42 / 120, seen: { from, to: from + width } };
          const known = tapeStrip(now, laying.layout, taped, { ...how, before });
          expect(known).toEqual(tapeStrip(now, laying.layout, taped, how));
        }
      }),
      { numRuns: 60 },
    );
  });

  it('has the very same atoms of a run that a gate on another does not move', () => {
    const corner = fenceOf(bare, [
      [0, 0],
      [600, 0],
      [600, 480],
    ]);
    const gated = gateOn(corner, 0, { from: 'start', offset: 250 });
    const laying = layOutFrom(gated, null);
    const before = new LetteredBefore();
    const drawn = (offset: number) => {
      const moved = moveGate(gated, firstGate(gated), { from: 'start', offset: inches(offset) });
      const laid = layOutFrom(moved, laying).layout;
      const [line] = Object.values(laid.lines);
      const taped = (line?.runs ?? []).map((run) => wholeRun(run, 'start'));
      return tapeStrip(moved, laid, taped, { width: 10, style, before });
    };
    const [was, is] = [drawn(250), drawn(251)];
    const same = is.atoms.filter((atom) => was.atoms.includes(atom));
    expect(textsOf(same).length).toBeGreaterThan(8);
    expect(same.length).toBeLessThan(is.atoms.length);
  });
});
