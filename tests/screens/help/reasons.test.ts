import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { clearPassage } from '../../../src/engine/gate/clearPassage.ts';
import { postTies } from '../../../src/engine/ties/postTies.ts';
import { tapeReadings } from '../../../src/engine/posts/tapeReadings.ts';
import type { GateLayout, LineLayout } from '../../../src/engine/layout.ts';
import { isTerminal, standsByGate, type Post } from '../../../src/engine/post.ts';
import { bayReasons } from '../../../src/screens/help/why/bayReasons.ts';
import { holeReasons } from '../../../src/screens/help/why/holeReasons.ts';
import { openingReasons } from '../../../src/screens/help/why/openingReasons.ts';
import { passageReasons } from '../../../src/screens/help/why/passageReasons.ts';
import { postReasons } from '../../../src/screens/help/why/postReasons.ts';
import {
  ofTheBuild,
  practice,
  workedOut,
  type Reason,
} from '../../../src/screens/help/why/reason.ts';
import { tapeReasons } from '../../../src/screens/help/why/tapeReasons.ts';
import { tieReasons } from '../../../src/screens/help/why/tieReasons.ts';
import { weightReasons } from '../../../src/screens/help/why/weightReasons.ts';
import { exactStyle } from '../../../src/drawing/orders/exactStyle.ts';
import { openSite } from '../../../src/site/openSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { fineStyle } from '../../../src/units/fineStyle.ts';
import { formatLength } from '../../../src/units/formatLength.ts';
import { inches } from '../../../src/units/inches.ts';
import { pipeSize } from '../../../src/units/pipeSize.ts';

const folder = join(import.meta.dirname, '../../../sample-sites');
const yards = readdirSync(folder)
  .filter((file) => file.endsWith('.site.json'))
  .map((file) => {
    const opened = openSite(readFileSync(join(folder, file), 'utf8'));
    if (!opened.ok) throw new Error(`${file}: ${opened.reason}`);
    return { file, site: opened.value, layout: layOutSite(opened.value) };
  });

/** Every source that a module of the tables has, wherever in its exports it stands. */
const sourcesIn = (value: unknown): string[] => {
  if (typeof value !== 'object' || value === null) return [];
  const { text, status } = value as { text?: unknown; status?: unknown };
  const own = typeof text === 'string' && typeof status === 'string' ? [text] : [];
  return [...own, ...Object.values(value).flatMap(sourcesIn)];
};
const modules = import.meta.glob('../../../src/trade/*.ts', { eager: true });
const tables = new Set(Object.values(modules).flatMap(sourcesIn));

const own = new Set([ofTheBuild, practice, workedOut, 'as the gate has it']);

/** What is said of figures, and sources that no table has and that are not ours. */
const strangers = (reasons: readonly Reason[]): readonly string[] =>
  reasons.map(({ source }) => source).filter((source) => !tables.has(source) && !own.has(source));

const said = (reasons: readonly Reason[]): string => reasons.map(({ says }) => says).join('\n');
const wallOf = (post: Post) => post.wall !== null;

describe('reasons of figures', () => {
  it('have the tables of the trade to be compared with', () => {
    expect(tables.size).toBeGreaterThan(60);
    expect(tables).toContain('ASTM F567-07 5.1');
  });

  it.each(yards)(
    'of posts: each has one for being there and one for its pipe, $file',
    ({ site, layout }) => {
      for (const post of layout.posts.values()) {
        const reasons = postReasons(post, site);
        expect([post.tag, strangers(reasons)]).toEqual([post.tag, []]);
        expect(said(reasons)).toContain(pipeSize(post.od, site.lengths));
        expect(reasons.length).toBeGreaterThanOrEqual(2);
      }
    },
  );

  it.each(yards)(
    'of holes: what asks the most is the hole, and all of it is told, $file',
    ({ site, layout }) => {
      for (const post of layout.posts.values()) {
        const reasons = holeReasons(post, site);
        if (wallOf(post) || standsByGate(post)) continue;
        expect([post.tag, strangers(reasons)]).toEqual([post.tag, []]);
        expect(reasons.length).toBeGreaterThanOrEqual(3);
        for (const size of [post.hole.diameter, post.hole.depth])
          expect(said(reasons)).toContain(formatLength(size, site.lengths));
        const sources = reasons.map(({ source }) => source);
        expect([...sources, 'as deep as the build asks for']).toContain(post.hole.source);
      }
    },
  );

  it.each(yards)(
    'of openings: every term and the sum are told, with where each is from, $file',
    ({ site, layout }) => {
      for (const { opening } of Object.values<GateLayout>(layout.gates)) {
        const reasons = openingReasons(opening, site);
        const style = exactStyle(
          opening.terms.flatMap((t) => [t.low, t.planned, t.high]),
          site.lengths,
        );
        opening.terms.forEach((term, n) => {
          expect(reasons[n]?.says).toContain(term.label);
          expect(reasons[n]?.says).toContain(formatLength(term.planned, style));
          expect(reasons[n]?.source).toContain(term.source);
        });
        expect(reasons[opening.terms.length]?.says).toContain(formatLength(opening.target, style));
        expect(reasons).toHaveLength(opening.terms.length + 2);
      }
    },
  );

  it.each(yards)(
    'of bays, tapes and passages: the figures are those of the layout, $file',
    ({ site, layout }) => {
      for (const line of Object.values<LineLayout>(layout.lines)) {
        for (const leg of line.legs) {
          const reasons = bayReasons(leg, line.runs, site);
          expect(strangers(reasons)).toEqual([]);
          if (line.runs.some((run) => run.legs.includes(leg.id)))
            expect(reasons.length).toBeGreaterThanOrEqual(3);
        }
        for (const run of line.runs) {
          const reasons = tapeReasons(run, site, layout);
          const { total } = tapeReadings(run, site.lines[run.line]?.hook ?? 'start', site.lengths);
          expect(said(reasons)).toContain(formatLength(total, site.lengths));
          expect(strangers(reasons)).toEqual([]);
        }
      }
      for (const laid of Object.values<GateLayout>(layout.gates)) {
        const gate = site.gates[laid.id];
        if (gate === undefined) continue;
        const reasons = passageReasons(gate, laid, site.lengths);
        const { clear } = clearPassage(gate, laid);
        expect(said(reasons)).toContain(formatLength(clear, fineStyle(site.lengths)));
        expect(strangers(reasons)).toEqual([]);
        expect(strangers(weightReasons(laid, site, layout))).toEqual([]);
      }
    },
  );

  it('of ties: two tapes and the shift of a slip, or why there are none', () => {
    const tied = yards.flatMap(({ site, layout }) =>
      postTies(site, layout)
        .slice(0, 4)
        .map((tie) => {
          const reasons = tieReasons(tie.post, site, layout);
          expect(strangers(reasons)).toEqual([]);
          const reads = tie.tapes === null ? [] : [tie.tapes.first.reads, tie.tapes.second.reads];
          for (const length of reads)
            expect(said(reasons)).toContain(formatLength(length, site.lengths));
          if (tie.lacks !== null) expect(said(reasons)).toContain(tie.lacks);
          return tie.tapes !== null;
        }),
    );
    expect(tied).toContain(true);
    const [{ site, layout } = yards[0]!] = yards;
    const line = [...layout.posts.values()].find((post) => !isTerminal(post));
    expect(tieReasons(line?.id ?? 'post:', site, layout)).toEqual([]);
  });
});

describe('the source of a figure', () => {
  const [yard] = yards;
  if (yard === undefined) throw new Error('expected a sample');
  const changed = (fields: object): Site => ({
    ...yard.site,
    specs: Object.fromEntries(
      Object.entries(yard.site.specs).map(([id, spec]) => [id, { ...spec, ...fields }]),
    ),
  });
  const bays = (site: Site) => {
    const layout = layOutSite(site);
    const line = Object.values<LineLayout>(layout.lines)[0];
    const leg = line?.legs[0];
    if (line === undefined || leg === undefined) throw new Error('expected a leg');
    return bayReasons(leg, line.runs, site)[0]?.source;
  };

  it('is the table that has the very same, else the build', () => {
    expect(bays(changed({ maxBay: inches(120) }))).toBe('ASTM F567-07 4.1');
    expect(bays(changed({ maxBay: inches(144) }))).toContain('LA County Code');
    expect(bays(changed({ maxBay: inches(117) }))).toBe(ofTheBuild);
  });

  it('names the build where that asks for a deeper hole than any rule', () => {
    const site = changed({ leastDepth: inches(50) });
    const post = [...layOutSite(site).posts.values()].find((one) => one.wall === null);
    if (post === undefined) throw new Error('expected a post');
    const reasons = holeReasons(post, site);
    expect(reasons.at(-1)?.source).toBe(ofTheBuild);
    expect(reasons.at(-1)?.says).toContain(formatLength(inches(50), site.lengths));
  });
});
