import { describe, expect, it } from 'vitest';
import { acceptable, acceptedAs } from '../../../src/engine/acceptedAs.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { mended } from '../../../src/engine/mend.ts';
import { acceptFlag } from '../../../src/site/edits/acceptFlag.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addTownRule } from '../../../src/site/edits/addTownRule.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import { changeTownRule } from '../../../src/site/edits/changeTownRule.ts';
import { setGuards } from '../../../src/site/edits/setGuards.ts';
import { setLegWall } from '../../../src/site/edits/setLegWall.ts';
import { entry } from '../../../src/site/entry.ts';
import type { LineId } from '../../../src/site/ids.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import type { TownMeasure, TownRule } from '../../../src/site/townRule.ts';
import type { WallTop } from '../../../src/site/wallTop.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../plainYard.ts';

/** 6 ft fence of 100 ft with a gate of 44 in in its middle. */
const yard = gateOn(
  fence(bare, [
    [0, 0],
    [1200, 0],
  ]),
  0,
  { from: 'middle', offset: 0 },
);
const line = Object.keys(yard.lines)[0] as LineId;

const rule = (
  measure: TownMeasure | null,
  limit: number | null,
  fields: Partial<TownRule> = {},
): TownRule => ({
  town: 'Inventedville',
  measure,
  limit: limit === null ? null : inches(limit),
  words: '',
  source: 'Invented code 1-2',
  ...fields,
});

const asked = (site: Site, measure: TownMeasure, limit: number): Site =>
  addTownRule(site, rule(measure, limit));

const found = (site: Site) =>
  layOutSite(site).flags.filter((flag) => flag.rule.startsWith('rule of a town'));

const told = (site: Site): string[] => found(site).map(({ message }) => message);

describe('rules of towns beside the plan', () => {
  it('[F40] a limit of CPSC Publication 362 typed as a town’s: 48 in is kept by 48 in, not by less', () => {
    // 48 in at least: CPSC Publication 362, as checkPool has it
    const pool = asked(setGuards(yard, line, 'pool'), 'pool barrier no lower than', 48);
    const high = (fabricHeight: number) =>
      told(changeSpec(pool, 'spec:six', { fabricHeight: inches(fabricHeight) }));
    expect(high(48)).toEqual([]);
    expect(high(42)).toEqual([
      `line:1: round a pool and 3'-6" high. Inventedville: pool barrier no lower than 4'-0" (Invented code 1-2).`,
    ]);
    expect(told(asked(yard, 'pool barrier no lower than', 96))).toEqual([]);
  });

  it.each([
    ['fence no higher than', 72, 71, `line:1: fabric 6'-0" high.`],
    ['gap under fabric no more than', 2, 1.5, `line:1: may have 2" under its fabric.`],
    [
      'holes no shallower than',
      30,
      31,
      /^line:1: \d+ holes are shallower, that of post \w+ 2'-6" deep\./,
    ],
    ['clear passage no less than', 40, 60, /^gate:1: 3'-[\d /-]+" is clear when it is open\./],
  ] as const)('[F40] %s: kept at %d in, told at %d in', (measure, keeps, fails, has) => {
    expect(told(asked(yard, measure, keeps))).toEqual([]);
    const flags = found(asked(yard, measure, fails));
    expect(flags).toHaveLength(1);
    const [flag] = flags;
    expect(flag?.level).toBe('settle');
    expect(flag?.place.id).toBe(measure.startsWith('clear') ? firstGate(yard) : line);
    expect(flag?.message).toMatch(has);
    expect(flag?.message).toContain(`Inventedville: ${measure}`);
  });

  it('[F40] posts nearer to a boundary are counted, the nearest named and the flag planted there', () => {
    const lot = addFeature(
      yard,
      { kind: 'boundary', label: 'Lot line', closed: false, setback: inches(0) },
      [
        { x: -100, y: -20 },
        { x: 1300, y: -34 },
      ],
    );
    const off = (limit: number) => asked(lot, 'fence no nearer the boundary than', limit);
    // at x 0 the boundary lies 21 in below, square to it 21 cos(atan(14 / 1400))
    expect(told(off(20.99))).toEqual([]);
    const [flag] = found(off(21.1));
    expect(flag?.message).toMatch(/^line:1: 1 post stands nearer to Lot line, post A at 1'-9"\./);
    expect(flag?.at).toEqual({ x: 0, y: 0 });
    expect(told(off(100))[0]).toMatch(/^line:1: \d\d posts stand nearer to Lot line, post A/);
  });

  it('[F40] where no source is told that is said; words go with the limit', () => {
    const site = addTownRule(
      yard,
      rule('fence no higher than', 48, { source: ' ', words: 'In\nfront' }),
    );
    expect(told(site)).toEqual([
      `line:1: fabric 6'-0" high. Inventedville: fence no higher than 4'-0"; In front (as the company has it, no source told).`,
    ]);
  });

  it('[F41] words alone are a caution at the first line, and rules of one town are accepted apart', () => {
    const one = addTownRule(yard, rule(null, null, { words: 'Finished side out' }));
    const site = addTownRule(one, rule(null, null, { words: `Ask ${'x'.repeat(3990)}` }));
    const flags = found(site);
    expect(flags.map(({ level, place, at }) => [level, place.id, at])).toEqual([
      ['caution', line, { x: 0, y: 0 }],
      ['caution', line, { x: 0, y: 0 }],
    ]);
    expect(told(one)).toEqual([
      'Inventedville: Finished side out (Invented code 1-2): not compared with the plan; mind it.',
    ]);
    const accepted = flags.reduce(
      (so, flag) => acceptFlag(so, { ...acceptable(flag), reason: 'Seen', by: 'AB', day: '' }),
      site,
    );
    expect(flags.map((flag) => acceptedAs(accepted, flag)?.acceptance.reason)).toEqual([
      'Seen',
      'Seen',
    ]);
    const changed = changeTownRule(accepted, 'town-rule:1', { words: 'Finished side in' });
    expect(found(changed).map((flag) => acceptedAs(changed, flag) === null)).toContain(true);
    expect(found(addTownRule(bare, rule(null, null, { words: 'Ask' })))).toEqual([]);
  });

  it('[F42] barbed wire counts to the height, and is itself compared with the fabric under it', () => {
    const wired = changeSpec(yard, 'spec:six', { barbedWire: { strands: 3, arms: 'outward' } });
    // arms of 12 in: RR-F-191/4F 3.5, as trade/barbedWire has it
    expect(told(asked(wired, 'fence no higher than', 84))).toEqual([]);
    expect(told(asked(wired, 'fence no higher than', 72))[0]).toMatch(
      /^line:1: fabric 6'-0" high, barbed wire to 1'-0" over it \(.+RR-F-191.+\): 7'-0" in all\./,
    );
    expect(told(asked(wired, 'barbed wire no lower than', 72))).toEqual([]);
    expect(told(asked(wired, 'barbed wire no lower than', 84))).toHaveLength(1);
    expect(told(asked(yard, 'barbed wire no lower than', 84))).toEqual([]);
  });

  it('[F42] a wall under the fence counts to its height', () => {
    const wall: WallTop = {
      width: inches(12),
      height: inches(24),
      rise: inches(0),
      steps: 0,
      set: { kind: 'plate', side: inches(5) },
    };
    const legs = legsOf(entry(yard, 'lines', line));
    const walled = legs.reduce((so, leg) => setLegWall(so, { line, leg: leg.id, wall }), yard);
    expect(told(asked(walled, 'fence no higher than', 90))[0]).toContain(
      `fabric 6'-0" high, on a wall of 2'-0": 8'-0" in all`,
    );
    // no hole in the ground is there to be too shallow
    expect(told(asked(walled, 'holes no shallower than', 60))).toEqual([]);
  });

  it('[F42] no boundary drawn is told once', () => {
    const two = fence(yard, [
      [0, 400],
      [600, 400],
    ]);
    const flags = found(asked(two, 'fence no nearer the boundary than', 24));
    expect(flags.map(({ level, message }) => [level, message.split('.')[0]])).toEqual([
      ['settle', 'no boundary is drawn to compare the fence with'],
    ]);
  });

  it('[F35] [F42] holes too shallow for a town are mended in one step', () => {
    const site = asked(yard, 'holes no shallower than', 36.5);
    const [flag] = found(site);
    expect(flag?.mend?.kind).toBe('deepen holes');
    const deep = flag?.mend === undefined ? site : mended(site, flag.mend);
    expect(told(deep)).toEqual([]);
    expect(deep.specs['spec:six']?.leastDepth).toBe(36.5);
  });
});
