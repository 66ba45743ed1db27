import { describe, expect, it } from 'vitest';
import { setLegGrade } from '../../../src/site/edits/setLegGrade.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { changeSpec } from '../../../src/site/edits/changeSpec.ts';
import type { FenceSpec } from '../../../src/site/fenceSpec.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, gateOn } from '../plainYard.ts';
import { loadLines } from './loadLines.ts';

const built = (site: Site, fields: Partial<FenceSpec>): Site =>
  changeSpec(site, 'spec:six', fields);

/** Code, count and packs of the lines of some parts of a list. */
const listed = (site: Site, ...parts: readonly string[]) =>
  loadLines(site)
    .filter(({ part }) => parts.includes(part))
    .map(({ code, count, sold }) => [
      code,
      Number(count.toFixed(4)),
      ...(sold === null ? [] : [`${sold.count} ${sold.pack}`]),
    ]);

const fabric = (height: number) => `fabric ${height}in-2-0.148`;

const run54 = fence(bare, [
  [0, 0],
  [648, 0],
]);

describe('load lists worked by hand', () => {
  it('[L5] a straight run of 54 ft, 4 ft high, two ends: the example of the trade’s count rules', () => {
    // derived from the rules of section 7 of the trade's practice: bands 1 + ⌈(48 − 18) ÷ 15⌉ = 3 a bar,
    // ties ⌈48 ÷ 15⌉ − 1 = 3 a line post and ⌈648 ÷ 24⌉ = 27 along the rail
    const site = built(run54, { fabricHeight: inches(48) });
    expect(listed(site, 'infill', 'rails', 'fittings')).toEqual([
      [fabric(48), 648, `2 roll of 50'-0"`],
      ['tension-wire', 648, '1 coil of 1,000 ft'],
      ['rail 1.66x0.13', 645.625, `3 stick of 21'-0"`],
      ['tension-bar 48in', 2],
      ['tension-band 2.375', 6],
      ['brace-band-rail 2.375', 2],
      ['rail-end 1.66x0.13', 2],
      ['loop-cap 1.9 1.66x0.13', 5],
      ['post-cap 2.375', 2],
      ['tie-post', 15, '1 bag of 100'],
      ['tie-rail', 27, '1 bag of 100'],
      ['hog-ring', 27, '1 box of 100'],
      // one a band: 6 and 2
      ['bolt', 8, '1 box of 100'],
    ]);
  });

  it('[L5] the same with a walk gate: its opening has no fabric, and its posts have ends of their own', () => {
    // the opening takes 48 and half of two posts of 2.875: 597.125 in are left, 120 and 477.125
    const site = built(gateOn(run54, 0, { from: 'start', offset: 120 }), {
      fabricHeight: inches(48),
    });
    expect(listed(site, 'infill', 'fittings')).toEqual([
      [fabric(48), 597.125, `1 roll of 50'-0"`],
      ['tension-wire', 597.125, '1 coil of 1,000 ft'],
      ['tension-bar 48in', 4],
      ['tension-band 2.375', 6],
      ['tension-band 2.875', 6],
      ['brace-band-rail 2.375', 2],
      ['brace-band-rail 2.875', 2],
      ['rail-end 1.66x0.13', 4],
      ['loop-cap 1.9 1.66x0.13', 3],
      ['post-cap 2.375', 2],
      ['post-cap 2.875', 2],
      // 3 line posts of 3; ⌈120 ÷ 24⌉ + ⌈477.125 ÷ 24⌉ = 5 + 20
      ['tie-post', 9, '1 bag of 100'],
      ['tie-rail', 25, '1 bag of 100'],
      ['hog-ring', 25, '1 box of 100'],
      ['bolt', 16, '1 box of 100'],
    ]);
  });

  it('[L5] bands on posts over 4 in take larger bolts, up to it the usual ones', () => {
    const post = (od: number) => ({
      terminalPost: { label: '', od: inches(od), wall: inches(0.2), section: 'round' as const },
    });
    const bolts = (od: number) =>
      listed(built(run54, { fabricHeight: inches(48), ...post(od) }), 'fittings').filter(([code]) =>
        String(code).startsWith('bolt'),
      );
    // two ends with three bands and one at the rail
    expect(bolts(4)).toEqual([['bolt', 8, '1 box of 100']]);
    expect(bolts(6.625)).toEqual([['bolt-large', 8, '1 box of 50']]);
  });

  it('[L5] a closed square of 50 ft with a double gate, 6 ft high: braces at every terminal', () => {
    const square = fence(
      bare,
      [
        [0, 0],
        [600, 0],
        [600, 600],
        [0, 600],
      ],
      'closed',
    );
    // 600 less 120 and 2.875 are two pieces of 238.5625 with one line post each; three sides of 5 bays
    const site = gateOn(square, 0, { from: 'middle', offset: 0 }, 2);
    expect(listed(site, 'infill', 'fittings')).toEqual([
      [fabric(72), 2277.125, `4 roll of 50'-0"`],
      ['tension-wire', 2277.125, '1 coil of 1,000 ft'],
      // five pieces have ten ends
      ['tension-bar 72in', 10],
      // 1 + ⌈(72 − 18) ÷ 15⌉ = 5 a bar: eight at corners, two at the gate
      ['tension-band 2.375', 40],
      ['tension-band 2.875', 10],
      // ten ends of top rail; a brace at each, with an end at its terminal and one at a line post
      ['brace-band-rail 1.9', 10],
      ['brace-band-rail 2.375', 16],
      ['brace-band-rail 2.875', 4],
      ['rail-end 1.66x0.13', 30],
      ['loop-cap 1.9 1.66x0.13', 14],
      ['post-cap 2.375', 4],
      ['post-cap 2.875', 2],
      // ⌈72 ÷ 15⌉ − 1 = 4; 3 × 25 and 2 × ⌈238.5625 ÷ 24⌉
      ['tie-post', 56, '1 bag of 100'],
      ['tie-rail', 95, '1 bag of 100'],
      ['hog-ring', 95, '1 box of 100'],
      ['truss-rod', 10],
      ['tightener', 10],
      ['brace-band-rod 2.375', 8],
      ['brace-band-rod 2.875', 2],
      ['bolt', 50 + 30 + 10, '1 box of 100'],
    ]);
  });

  it('[L5] a court of 60 by 120 ft, 10 ft high, with a middle rail', () => {
    const court = fence(
      bare,
      [
        [0, 0],
        [720, 0],
        [720, 1440],
        [0, 1440],
      ],
      'closed',
    );
    const middleRail = { label: '1-5/8', od: inches(1.66), wall: inches(0.13) };
    const site = built(court, { fabricHeight: inches(120), middleRail });
    expect(listed(site, 'infill', 'fittings')).toEqual([
      [fabric(120), 4320, `8 roll of 50'-0"`],
      ['tension-wire', 4320, '1 coil of 1,000 ft'],
      ['tension-bar 120in', 8],
      // 1 + ⌈(120 − 18) ÷ 15⌉ = 8
      ['tension-band 2.375', 64],
      ['brace-band-rail 1.9', 8],
      // eight ends of each of two rails, and of a brace
      ['brace-band-rail 2.375', 24],
      ['rail-end 1.66x0.13', 32],
      ['loop-cap 1.9 1.66x0.13', 32],
      ['post-cap 2.375', 4],
      // ⌈120 ÷ 15⌉ − 1 = 7 on 32 line posts; 180 along each rail
      ['tie-post', 224, '3 bag of 100'],
      ['tie-rail', 360, '4 bag of 100'],
      ['hog-ring', 180, '2 box of 100'],
      ['truss-rod', 8],
      ['tightener', 8],
      ['brace-band-rod 2.375', 8],
      ['bolt', 64 + 32 + 8, '2 box of 100'],
    ]);
  });

  it('[L6] a hill of three steps: every bay is a piece with ends of its own', () => {
    const level = fence(bare, [
      [0, 0],
      [360, 0],
    ]);
    const shots = [
      [-100, -100],
      [500, -100],
      [500, 100],
      [-100, 100],
    ].map(([x = 0, y = 0]) => ({ x, y, z: inches(0.15 * x), label: '' }));
    const leg = legsOf(level.lines['line:1']!)[0]!.id;
    const site = built(setLegGrade(addShots(level, shots), 'line:1', leg, 'step'), {
      fabricHeight: inches(48),
    });
    // level panels are measured along the grade between their posts: 3 bays and a bit over 10 ft make 4
    const pieces = 4;
    const all = new Map(listed(site, 'infill', 'fittings').map(([code, ...rest]) => [code, rest]));
    expect(all.get('tension-bar 48in')).toEqual([2 * pieces]);
    // three a bar, on two terminals and three line posts that carry two pieces each
    expect(all.get('tension-band 2.375')).toEqual([6]);
    expect(all.get('tension-band 1.9')).toEqual([18]);
    expect(all.get('rail-end 1.66x0.13')).toEqual([2 * pieces]);
    // no rail runs over a post at a step
    expect(all.get('loop-cap 1.9 1.66x0.13')).toBeUndefined();
    expect(all.get('post-cap 1.9')).toEqual([3]);
    expect(all.get('tie-post')).toBeUndefined();
  });

  it('[L5] a stretch that is shorter than a roll takes one, and says what is left', () => {
    const short = built(
      fence(bare, [
        [0, 0],
        [300, 0],
      ]),
      { fabricHeight: inches(48) },
    );
    const [line] = loadLines(short).filter(({ code }) => code.startsWith('fabric'));
    expect(line?.sold).toMatchObject({ count: 1, pack: `roll of 50'-0"`, left: 300 });
  });

  it('[L7] barbed wire: every strand, and an arm on every post', () => {
    const site = built(run54, { barbedWire: { strands: 3, arms: 'outward' } });
    const all = new Map(listed(site, 'infill', 'fittings').map(([code, ...rest]) => [code, rest]));
    expect(all.get('barbed-wire')).toEqual([3 * 648, '1 roll of 80 rods, 1,320 ft']);
    expect(all.get('barbed-arm 1.9 outward')).toEqual([5]);
    expect(all.get('barbed-arm 2.375 outward')).toEqual([2]);
  });

  it('[L7] without a top rail a wire runs along the top, and posts have caps of their own', () => {
    const site = built(run54, { topRail: null, fabricHeight: inches(48) });
    const all = new Map(
      listed(site, 'infill', 'rails', 'fittings').map(([c, ...rest]) => [c, rest]),
    );
    expect(all.get('tension-wire')).toEqual([2 * 648, '1 coil of 1,000 ft']);
    expect(all.get('post-cap 1.9')).toEqual([5]);
    expect(all.get('tie-rail')).toBeUndefined();
    // and both ends are braced, though it is 4 ft high
    expect(all.get('truss-rod')).toEqual([2]);
  });

  // yields of bags: 0.45 and 0.60 cu ft, common practice, no published source
  it('[L8] concrete is rounded up to bags on the total, not hole by hole', () => {
    const [line] = loadLines(run54).filter(({ code }) => code === 'concrete');
    const { count, sold } = line!;
    expect(sold?.count).toBe(Math.ceil(count / 0.6));
    expect(sold?.pack).toBe('bag of 80 lb');
  });
});
