import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { loadOf } from '../../../src/engine/load/loadOf.ts';
import { pricedLoad } from '../../../src/engine/price/pricedLoad.ts';
import { usualBoards } from '../../../src/engine/usualBoards.ts';
import { usualPanels } from '../../../src/engine/usualPanels.ts';
import { pricesFromCsv } from '../../../src/importers/csv/pricesFromCsv.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { reverseLine } from '../../../src/site/edits/reverseLine.ts';
import { setCounting } from '../../../src/site/edits/setCounting.ts';
import { setLineSpec } from '../../../src/site/edits/setLineSpec.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import type { LineId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';
import { mixedSite } from '../mixedSite.ts';
import { loadLines } from './loadLines.ts';

const listed = (site: Site, ...parts: readonly string[]) =>
  loadLines(site)
    .filter(({ part }) => parts.includes(part))
    .map(({ code, count, sold }) => [
      code,
      Number(count.toFixed(4)),
      ...(sold === null ? [] : [`${sold.count} ${sold.pack}`]),
    ]);

const run = (feet: number, spec: FenceSpec): Site =>
  changeSpec(
    fence(bare, [
      [0, 0],
      [12 * feet, 0],
    ]),
    'spec:six',
    spec,
  );

const { spec: boards } = usualBoards(inches(72));
const { spec: panels } = usualPanels(inches(72));
const ticketsOf = (site: Site) => loadOf(site, layOutSite(site)).tickets;

describe('fence that is no chain link, counted by hand', () => {
  it('[L27] 32 ft of tight boards 5 1/2 in wide, 6 ft high, on three rails', () => {
    // four bays of 96 in; ⌈384 ÷ 5.5⌉ = 70 boards; 3 rails × 4 bays × 96 in of 16 ft lumber, two a length;
    // two screws where each of 70 boards crosses each of 3 rails; a bracket at both ends of 12 rails
    expect(listed(run(32, boards), 'posts', 'infill', 'rails', 'fittings')).toEqual([
      ['line-post 3.5x1.75-square', 3],
      ['terminal-post 3.5x1.75-square', 2],
      ['board 5.5in 72in', 70],
      ['board-rail 2-4', 1152, `6 stick of 16'-0"`],
      ['post-cap 3.5-square', 5],
      ['board-screw', 420],
      ['board-rail-bracket', 24],
    ]);
    // holes three times the side, rounded up to an auger of 12 in, 30 in deep, less 3.5 in square:
    // (π/4 × 144 − 12.25) × 30 ÷ 1728 = 1.7508 cu ft each; five of them in bags of 0.6
    expect(listed(run(32, boards), 'concrete')).toEqual([['concrete', 8.7541, '15 bag of 80 lb']]);
  });

  it('[L27] lumber as long as the company buys it: 8 ft holds one rail of a bay', () => {
    const short = setCounting(run(32, boards), { lumber: inches(96) });
    expect(loadLines(short).find(({ code }) => code === 'board-rail 2-4')?.sold).toMatchObject({
      count: 12,
      pack: `stick of 8'-0"`,
      left: 0,
    });
  });

  it('[L27] pickets with gaps: one for every picket and gap, the last one whole', () => {
    const picket = (feet: number) =>
      loadLines(
        run(feet, {
          ...boards,
          infill: {
            kind: 'boards',
            board: 'Picket',
            rail: '2 × 4',
            rails: 2,
            width: inches(3.5),
            gap: inches(2.5),
          },
        }),
      ).find(({ code }) => code.startsWith('board '));
    // 240 ÷ 6 is 40 and no more; a quarter of an inch over 20 ft asks for one more
    expect(picket(20)?.count).toBe(40);
    expect(picket(20 + 1 / 48)?.count).toBe(41);
    expect(picket(20)?.code).toBe('board picket-3.5in 72in');
    expect(picket(20)?.item).toBe(`Board, Picket, 3 1/2" wide, 6'-0"`);
  });

  it('[L28] 30 ft of panels of 8 ft: four, the last one cut to 62 in, four brackets each', () => {
    expect(listed(run(30, panels), 'infill', 'rails', 'fittings')).toEqual([
      ['panel 96in 72in', 4],
      ['post-cap 2.5-square', 5],
      ['panel-bracket', 16],
    ]);
    expect(ticketsOf(run(30, panels)).map(({ kind, ticket }) => [kind, ticket.sticks])).toEqual([
      ['panel', [{ from: 'bought', stick: 96, pieces: [{ length: 62, for: '3–B' }], left: 34 }]],
    ]);
    const equal: FenceSpec = {
      ...panels,
      infill: { kind: 'panels', panel: '', width: inches(96), last: 'all equal' },
    };
    // (357.5 − 3 × 2.5) ÷ 4
    expect(
      ticketsOf(run(30, equal)).flatMap(({ ticket }) =>
        ticket.sticks.flatMap(({ pieces }) => pieces.map(({ length }) => length)),
      ),
    ).toEqual([87.5, 87.5, 87.5, 87.5]);
  });

  it('[L29] a yard of three kinds: each is counted by its own rules, the posts where they meet once', () => {
    const drawn = fence(
      fence(
        fence(bare, [
          [0, 0],
          [600, 0],
        ]),
        [
          [600, 0],
          [600, 384],
        ],
      ),
      [
        [600, 384],
        [240, 384],
      ],
    );
    const built = addSpec(addSpec(drawn, 'spec:boards', boards), 'spec:panels', panels);
    const site = gateOn(
      setLineSpec(setLineSpec(built, 'line:2', 'spec:boards'), 'line:3', 'spec:panels'),
      0,
      { from: 'middle', offset: 0 },
    );
    const counts = new Map(loadLines(site).map(({ code, count }) => [code, count]));
    // two pieces of fabric either side of the gate
    expect(counts.get('tension-bar 72in')).toBe(4);
    expect(counts.get('board 5.5in 72in')).toBe(70);
    // 360 less half a post of 3.5 and half of one of 2.5 is 357 clear: four panels
    expect(counts.get('panel 96in 72in')).toBe(4);
    const laid = layOutSite(site);
    const caps = [...counts].filter(([code]) => /^(?:post|loop)-cap/.test(code));
    expect(caps.reduce((sum, [, count]) => sum + count, 0)).toBe(laid.posts.size);
    // the post between fabric and boards is the larger of what both ask for
    expect(laid.posts.get('post:mark:2')).toMatchObject({ od: 3.5, section: 'square' });
    expect(laid.flags.filter(({ level }) => level === 'stop')).toEqual([]);
  });

  it('[L29] a gate in boards takes its posts from its build, and the boards stop at them', () => {
    const site = gateOn(run(32, boards), 0, { from: 'middle', offset: 0 });
    const laid = layOutSite(site);
    const gate = [...laid.posts.values()].filter(({ kind }) => kind === 'gate');
    expect(gate.map(({ od, section }) => [od, section])).toEqual([
      [5.5, 'square'],
      [5.5, 'square'],
    ]);
    // 384 less 48 and 5.5 between centres of gate posts: two pieces of 165.25, ⌈165.25 ÷ 5.5⌉ = 31
    const found = loadLines(site).find(({ code }) => code.startsWith('board '));
    expect(found?.count).toBe(62);
    expect(laid.flags.map(({ rule }) => rule)).toContain('leaf on a square post');
  });

  it('[L27] hours are told of boards and panels too', () => {
    const list = pricesFromCsv('Item,Unit,Price,Currency\nhour,hour,60.00,USD\n');
    if (!list.ok) throw new Error(list.reason);
    const tasks = (site: Site) => {
      const layout = layOutSite(site);
      return pricedLoad(site, layout, { load: loadOf(site, layout), list: list.value }).tasks;
    };
    const named = (site: Site) => tasks(site).map(({ task }) => task);
    expect(named(run(32, boards))).toContain('Rail and board fence');
    expect(tasks(run(30, panels)).find(({ task }) => task === 'Hang a panel')?.hours).toBe(2);
    expect(named(run(32, boards))).not.toContain('Stretch and tie fabric');
  });

  it('[L29] any mixed yard drawn backwards counts the same, and chain-link parts go with fabric alone', () => {
    const totals = (site: Site) => {
      const all = new Map<string, number>();
      for (const { code, count } of loadLines(site)) {
        all.set(code, (all.get(code) ?? 0) + count);
      }
      return [...all].map(([code, count]) => `${code} ${count.toFixed(3)}`).toSorted();
    };
    fc.assert(
      fc.property(mixedSite, fc.nat(2), (site, n) => {
        const ids = Object.keys(site.lines) as LineId[];
        const line = ids[n % ids.length]!;
        expect(totals(reverseLine(site, line))).toEqual(totals(site));
        const kinds = new Set(ids.map((id) => site.specs[site.lines[id]!.spec]!.infill.kind));
        const codes = totals(site).join('\n');
        if (!kinds.has('chain link')) expect(codes).not.toMatch(/^(?:tension|tie|hog|fabric)/m);
        if (!kinds.has('boards')) expect(codes).not.toMatch(/^board/m);
        if (!kinds.has('panels')) expect(codes).not.toMatch(/^panel/m);
      }),
      { numRuns: 150 },
    );
  });
});
