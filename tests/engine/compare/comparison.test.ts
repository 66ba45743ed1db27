import { describe, expect, it } from 'vitest';
import type { Amount } from '../../../src/engine/compare/amount.ts';
import { candidatesOf } from '../../../src/engine/compare/candidatesOf.ts';
import { comparisonOf, type Comparison } from '../../../src/engine/compare/comparison.ts';
import { namedSites } from '../../../src/engine/compare/namedSites.ts';
import { acceptable } from '../../../src/engine/acceptedAs.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { pricesFromCsv } from '../../../src/importers/csv/pricesFromCsv.ts';
import { acceptFlag } from '../../../src/site/edits/acceptFlag.ts';
import { addAlternative } from '../../../src/site/edits/addAlternative.ts';
import { addSpec } from '../../../src/site/edits/addSpec.ts';
import { changeAlternative } from '../../../src/site/edits/changeAlternative.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { setGatePost } from '../../../src/site/edits/setGatePost.ts';
import { setLineSpec } from '../../../src/site/edits/setLineSpec.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { formatMoney } from '../../../src/units/money.ts';
import { bare, fence, firstGate, gateOn, spec } from '../plainYard.ts';

const four = addSpec(bare, 'spec:four', { ...spec, label: '4 ft', fabricHeight: inches(48) });

/** 54 ft between two marks, 4 ft high. */
const run = setLineSpec(
  fence(four, [
    [0, 0],
    [648, 0],
  ]),
  'line:1',
  'spec:four',
);
/** The same 6 ft high for choice, and again as it is. */
const choices = changeAlternative(
  addAlternative(addAlternative(run, 'As it is'), 'Tall'),
  'alternative:2',
  { instead: { 'spec:four': 'spec:six' } },
);

const compared = (site: Site, rows: readonly string[] | null = null): Comparison => {
  const list = pricesFromCsv(['Item,Unit,Price,Currency', ...(rows ?? [])].join('\n'));
  if (!list.ok) throw new Error(list.reason);
  return comparisonOf(candidatesOf(namedSites(site)), rows === null ? null : list.value);
};

const written = (amount: Amount | null | undefined): string | null =>
  amount?.amount == null ? null : formatMoney(amount.amount);

describe('a yard and its alternatives, compared', () => {
  it('[M10] as it is drawn first, then as each alternative has it', () => {
    const { columns } = compared(choices);
    expect(columns.map(({ label, alternative }) => [label, alternative])).toEqual([
      ['', null],
      ['As it is', 'alternative:1'],
      ['Tall', 'alternative:2'],
    ]);
    const drawn = setLineSpec(choices, 'line:1', 'spec:six');
    expect(columns[2]?.layout).toEqual(layOutSite(drawn));
    expect(columns[0]?.layout).toEqual(layOutSite(choices));
    expect(compared(run).columns).toHaveLength(1);
  });

  it('[M10] a post that a gate has for itself stays', () => {
    const thick = { label: '4', od: inches(4), wall: inches(0.226), section: 'round' as const };
    const gated = gateOn(choices, 0, { from: 'middle', offset: 0 });
    const site = setGatePost(gated, firstGate(gated), thick);
    const sizes = compared(site).columns.map(({ layout }) =>
      [...layout.posts.values()].filter(({ kind }) => kind === 'gate').map(({ od }) => od),
    );
    expect(sizes).toEqual([
      [4, 4],
      [4, 4],
      [4, 4],
    ]);
  });

  it('[M11] posts, holes, fence and flags, and how many more', () => {
    // bays of 8 ft at most: 54 ft is 7 of them, not 6
    const close = changeSpec(choices, 'spec:six', { maxBay: inches(96) });
    const { columns } = compared(close);
    expect(columns.map(({ posts, holes, fence: all }) => [posts, holes, all])).toEqual([
      [7, 7, 648],
      [7, 7, 648],
      [8, 8, 648],
    ]);
    expect(columns.map(({ more }) => more?.posts ?? null)).toEqual([null, 0, 1]);
    expect(columns[2]?.more).toMatchObject({
      holes: 1,
      fence: 0,
      stops: 0,
      settles: 0,
      costs: null,
    });
  });

  it('[M11] a stop of an alternative counts there, and a flag that was accepted nowhere', () => {
    const rule = {
      town: 'Inventedville',
      measure: 'fence no higher than' as const,
      limit: inches(60),
      words: '',
      source: '',
    };
    const asked: Site = { ...choices, townRules: { 'town-rule:1': rule } };
    const open = compared(asked).columns;
    expect(open.map(({ settles }) => settles)).toEqual([0, 0, 1]);
    expect(open[2]?.more?.settles).toBe(1);
    const flag = open[2]?.layout.flags.find(({ level }) => level === 'settle');
    if (flag === undefined) throw new Error('expected a flag');
    const accepted = acceptFlag(asked, {
      ...acceptable(flag),
      reason: 'The town let it pass',
      by: 'AB',
      day: '2026-11-25',
    });
    expect(compared(accepted).columns.map(({ settles }) => settles)).toEqual([0, 0, 0]);

    // a gate of two leaves has no room in 8 ft
    const short = gateOn(
      fence(bare, [
        [0, 0],
        [96, 0],
      ]),
      0,
      { from: 'middle', offset: 0 },
      2,
    );
    expect(compared(short).columns[0]?.stops).toBe(1);
  });

  it('[M12] 54 ft at 4 ft and at 6 ft, line by line', () => {
    const { lines } = compared(choices);
    const rows = lines.map(({ code, each, counts: [here, same, there] }) => {
      expect(same).toBe(here);
      return [code, each, here, there];
    });
    const [concrete] = rows.splice(-1);
    const rail = rows.splice(6, 1)[0];
    // worked by hand. 6 bays of 9 ft: 5 line posts and 2 ends either way. Over the ground 2 in less and
    // 2 in more than the fabric; holes of 24 in, and 3 in more for each foot over 4 ft
    expect(rows).toEqual([
      ['line-post 1.9x0.13', 48 - 2 + 24, 5, 0],
      ['line-post 1.9x0.13', 72 - 2 + 30, 0, 5],
      ['terminal-post 2.375x0.13', 48 + 2 + 24, 2, 0],
      ['terminal-post 2.375x0.13', 72 + 2 + 30, 0, 2],
      ['fabric 48in-2-0.148', null, 648, 0],
      ['fabric 72in-2-0.148', null, 0, 648],
      // a bar at either end, 2 in shorter than its fabric
      ['tension-bar 48in', 46, 2, 0],
      ['tension-bar 72in', 70, 0, 2],
      // 15 in apart at most, from 9 in in to 9 in in: 3 up 4 ft, 5 up 6 ft
      ['tension-band 2.375', null, 2 * 3, 2 * 5],
      // 6 ft is braced at both ends: a rail with two ends, and a rod from its far end down
      ['brace-band-rail 2.375', null, 2, 2 + 2],
      ['brace-band-rail 1.9', null, 0, 2],
      ['rail-end 1.66x0.13', null, 2, 2 + 4],
      // 15 in apart at most, the top one the rail's: 3 up 4 ft, 4 up 6 ft
      ['tie-post', null, 5 * 3, 5 * 4],
      // one a band
      ['bolt', null, 6 + 2, 10 + 4 + 2 + 2],
      ['truss-rod', null, 0, 2],
      ['tightener', null, 0, 2],
      ['brace-band-rod 2.375', null, 0, 2],
    ]);
    // less half of either end post; two braces from face to face of posts 9 ft apart, cut to 1/16 in
    expect(rail?.[2]).toBe(648 - 2.375);
    expect(Number(rail?.[3]) - 2 * (108 - 2.375 / 2 - 1.9 / 2)).toBeCloseTo(648 - 2.375, 1);
    // seven holes of one width, as deep as 24 is to 30
    expect(concrete?.[0]).toBe('concrete');
    expect(Number(concrete?.[2]) / Number(concrete?.[3])).toBeCloseTo(24 / 30, 9);
  });

  it('[M12] lines that are alike are left out', () => {
    expect(compared(addAlternative(run, 'As it is')).lines).toEqual([]);
    expect(compared(choices).lines.map(({ code }) => code)).not.toContain('tension-wire');
  });

  it('[M13] [M14] amounts to the cent, and the difference', () => {
    const rows = ['tension-band 2.375,each,0.85,USD', 'tie-post,each,0.11,USD'];
    const { columns } = compared(choices, [...rows, 'margin,percent,25,USD']);
    // 6 × 0.85 + 15 × 0.11; 10 × 0.85 + 20 × 0.11
    expect(columns.map(({ costs }) => written(costs?.materials))).toEqual([
      '6.75',
      '6.75',
      '10.70',
    ]);
    expect(columns[2]?.more?.costs).toMatchObject({ labour: { amount: null }, tax: null });
    expect(written(columns[2]?.more?.costs?.materials)).toBe('3.95');
    // a quarter of each, to the cent: 1.69 and 2.68
    expect(columns.map(({ costs }) => written(costs?.total))).toEqual(['8.44', '8.44', '13.38']);
    expect(written(columns[2]?.more?.costs?.total)).toBe('4.94');
  });

  it('[M13] names what is not in an amount, and tells none from zero', () => {
    const [drawn, , tall] = compared(choices, ['tension-band 2.375,each,0.85,USD']).columns;
    expect(drawn?.costs?.materials.without).toContain('tension-bar 48in');
    expect(drawn?.costs?.materials.without).not.toContain('tension-band 2.375');
    expect(drawn?.costs?.materials.without).not.toContain('hour');
    expect(drawn?.costs?.labour).toEqual({ amount: null, without: ['hour'] });
    expect(drawn?.costs?.margin).toBeNull();
    expect(drawn?.costs?.tax).toBeNull();
    expect(drawn?.costs?.total.without).toContain('hour');
    // what either lacks
    const more = tall?.more?.costs?.materials.without;
    expect(more).toContain('tension-bar 48in');
    expect(more).toContain('tension-bar 72in');

    const none = compared(choices, ['margin,percent,25,USD', 'tax,percent,0,USD']).columns[0];
    expect(none?.costs?.materials.amount).toBeNull();
    expect(none?.costs?.total.amount).toBeNull();
    expect(none?.costs?.margin?.amount).toBeNull();

    const free = compared(choices, [
      ...new Set(
        (drawn?.load.lines ?? []).map(({ code, unit }) => {
          const units = { each: 'each', length: 'ft', 'cubic feet': 'cu ft' } as const;
          return `${code},${units[unit]},0,USD`;
        }),
      ),
      'hour,hour,10,USD',
    ]).columns[0];
    expect(free?.costs?.materials).toEqual({ amount: 0n, without: [] });
    expect(free?.costs?.total.without).toEqual([]);
    expect(written(free?.costs?.total)).toBe(written(free?.costs?.labour));
  });

  it('[M13] without a price list there is nothing to pay', () => {
    const { columns } = compared(choices);
    expect(columns.map(({ costs, priced }) => [costs, priced])).toEqual(
      columns.map(() => [null, null]),
    );
  });

  it('[M15] takes over what is laid out alike', () => {
    const before = candidatesOf(namedSites(choices));
    expect(before[1]?.layout).toBe(before[0]?.layout ?? null);
    const named = changeAlternative(choices, 'alternative:2', { label: 'Taller' });
    const after = candidatesOf(namedSites(named), before);
    after.forEach(({ layout, load }, n) => {
      expect(layout).toBe(before[n]?.layout);
      expect(load).toBe(before[n]?.load);
    });
    const back = changeAlternative(named, 'alternative:2', {
      instead: { 'spec:four': 'spec:four' },
    });
    expect(candidatesOf(namedSites(back), before)[2]?.layout).toBe(before[0]?.layout);
    const lower = changeSpec(named, 'spec:six', { fabricHeight: inches(60) });
    expect(candidatesOf(namedSites(lower), before)[2]?.layout).not.toBe(before[2]?.layout);
  });
});
