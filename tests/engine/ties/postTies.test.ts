import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { isTerminal } from '../../../src/engine/post.ts';
import { postTies, type PostTie } from '../../../src/engine/ties/postTies.ts';
import { placeOfOffset } from '../../../src/engine/ties/wallOffset.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { tied } from '../../../src/geometry/tied.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addFix } from '../../../src/site/edits/addFix.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { sampleYards } from '../../drawing/sampleYards.ts';
import { bare, fence } from '../plainYard.ts';

const box = (x: number, y: number, wide: number, high: number) => [
  { x, y },
  { x: x + wide, y },
  { x: x + wide, y: y + high },
  { x, y: y + high },
];

const house = (site: Site, x: number, y: number): Site =>
  addFeature(site, { kind: 'building', label: 'House' }, box(x, y, 480, 360));

const tiesOf = (site: Site): readonly PostTie[] => postTies(site, layOutSite(site));

const marksIn = ({ tapes }: PostTie): string[] =>
  tapes === null
    ? []
    : [tapes.first, tapes.second, ...(tapes.check === null ? [] : [tapes.check])].map(
        ({ from }) => from.name,
      );

/** How far from a post its tapes and its offset lead; inches. */
const leadsAway = (site: Site): { tapes: number; offset: number; ties: number } => {
  const layout = layOutSite(site);
  const away = { tapes: 0, offset: 0, ties: 0 };
  for (const { post, tapes, offset } of postTies(site, layout)) {
    const at = layout.posts.get(post)?.at ?? { x: NaN, y: NaN };
    away.ties += 1;
    if (tapes !== null) {
      const base = { start: tapes.first.from.at, end: tapes.second.from.at };
      const { side } = tapes;
      const met = tied(base, { start: tapes.first.reads, end: tapes.second.reads, side });
      if (met.kind !== 'met') throw new Error(`expected tapes that meet, found ${met.kind}`);
      away.tapes = Math.max(away.tapes, (distance(met.at, at) * tapes.slip) / tapes.shift);
    }
    if (offset !== null) away.offset = Math.max(away.offset, distance(placeOfOffset(offset), at));
  }
  return away;
};

describe('postTies', () => {
  it('[P28] every terminal of every sample is held, or told why not', () => {
    for (const { site, layout } of sampleYards) {
      const ties = postTies(site, layout);
      const terminals = [...layout.posts.values()].filter(isTerminal);
      expect(ties.map(({ post }) => post)).toEqual(terminals.map(({ id }) => id));
      for (const { tapes, offset, lacks } of ties) {
        expect(lacks === null).toBe(tapes !== null || offset !== null);
      }
    }
  });

  it('[P29] [P31] in any yard tapes and offset lead back to the post, as near as they are rounded', () => {
    const spot = fc.tuple(
      fc.integer({ min: -1200, max: 1200 }),
      fc.integer({ min: -1200, max: 1200 }),
    );
    const spots = fc.uniqueArray(spot, { minLength: 2, maxLength: 7, selector: String });
    const style = fc.constantFrom<Site['lengths']>(
      { system: 'feet', fraction: 16 },
      { system: 'mm', fraction: 16 },
      { system: 'decimal feet', fraction: 16 },
    );
    const steps = { feet: 1 / 16, mm: 1 / 25.4, 'decimal feet': 0.12, inches: 0, m: 0 };
    let ties = 0;
    fc.assert(
      fc.property(spots, spot, style, (places, [x, y], lengths) => {
        const found = leadsAway({ ...fence(house(bare, x, y), places), lengths });
        ties += found.ties;
        const step = steps[lengths.system];
        expect(found.tapes).toBeLessThan(1.2 * step);
        expect(found.offset).toBeLessThan(step);
      }),
      { numRuns: 60 },
    );
    expect(ties).toBeGreaterThan(60);
  });

  it('[P30] takes no mark of fence, no rough one, none without a name and none behind a house', () => {
    // the fence is south of the house: from there its north corners are behind it
    const drawn = fence(house(bare, 0, 0), [
      [100, -300],
      [380, -300],
    ]);
    const at = (x: number, y: number) => ({ x, y });
    const origin = { latitude: 40, longitude: -90 } as never;
    const rough = addFix(drawn, {
      at: at(240, -400),
      accuracy: inches(100),
      label: 'Rough',
      origin,
    });
    const marked = addMark(addMark(rough, at(240, -500)), at(700, -300), 'Pin');
    for (const tie of tiesOf(marked)) {
      expect(marksIn(tie).toSorted()).toEqual(['House, SE corner', 'House, SW corner', 'Pin']);
    }
  });

  it('[P28] a terminal that nothing holds says why and what would help', () => {
    const alone = fence(bare, [
      [0, 0],
      [600, 0],
    ]);
    expect(tiesOf(alone).map(({ lacks }) => lacks?.split(':')[0])).toEqual([
      'nothing on site is in sight of it',
      'nothing on site is in sight of it',
    ]);
    const [one] = tiesOf(addMark(alone, { x: 0, y: 300 }, 'Pin'));
    expect(one?.lacks).toContain('only Pin is in sight of it');
    const inRow = addMark(addMark(alone, { x: -300, y: 0 }, 'Pin'), { x: -500, y: 0 }, 'Stake');
    expect(tiesOf(inRow)[0]?.lacks).toContain('cross too flat');
  });

  it('[P31] an offset goes square off a wall, from its nearer corner', () => {
    const [first] = tiesOf(
      fence(house(bare, 0, 0), [
        [120, -300],
        [380, -300],
      ]),
    );
    expect(first?.offset).toMatchObject({
      of: 'building',
      from: { name: 'House, SW corner' },
      to: { name: 'House, SE corner' },
      along: 120,
      off: 300,
      side: 'right',
    });
  });

  it('[P32] names every mark once, things alike from the west', () => {
    const drawn = fence(house(house(bare, 2000, 0), 0, 0), [
      [100, -300],
      [2300, -300],
    ]);
    const [west, east] = tiesOf(drawn);
    expect(marksIn(west!)[0]).toBe('House 1 from the west, SW corner');
    expect(marksIn(east!)[0]).toMatch(/^House 2 from the west/);
  });

  it('[P33] tells of marks and posts that no reading holds where others are held', () => {
    const drawn = fence(house(bare, 0, 0), [
      [100, -300],
      [380, -300],
    ]);
    expect(
      tiesOf(drawn).some(({ sketched, tapes }) => sketched || tapes?.first.from.sketched),
    ).toBe(false);
    const ids = Object.keys(drawn.marks) as MarkId[];
    const tape = (from: MarkId, to: MarkId) => ({
      kind: 'tape' as const,
      from,
      to,
      length: inches(distance(drawn.marks[from]!, drawn.marks[to]!)),
      trust: null,
      label: '',
    });
    // the first three corners of the house are taped to each other, nothing else is
    const [a, b, c] = ids as [MarkId, MarkId, MarkId];
    const taped = [tape(a, b), tape(b, c), tape(a, c)].reduce(addObservation, drawn);
    const ties = tiesOf(taped);
    expect(ties.map(({ sketched }) => sketched)).toEqual([true, true]);
    const held = ties.flatMap(({ tapes }) =>
      tapes === null ? [] : [tapes.first.from, tapes.second.from],
    );
    expect(held.map(({ name, sketched }) => [name, sketched])).toContainEqual([
      'House, SW corner',
      false,
    ]);
  });

  it('[P33] tells how much more a tape reads along sloping ground', () => {
    const drawn = fence(house(bare, 0, 0), [
      [100, -300],
      [380, -300],
    ]);
    const shots = [
      { x: -900, y: -900, z: -90 },
      { x: 900, y: -900, z: -90 },
      { x: 900, y: 900, z: 90 },
      { x: -900, y: 900, z: 90 },
    ].map((shot) => ({ ...shot, z: inches(shot.z), label: '' }));
    const [level] = tiesOf(drawn);
    const [first] = tiesOf(addShots(drawn, shots));
    expect(level?.onSlope).toBeNull();
    // 1 in 10 down 300 in from the wall: a tape of hypot(100, 300) falls 30; the other of hypot(380, 300) too
    expect(first?.onSlope).toBeCloseTo(Math.hypot(100, 300, 30) - Math.hypot(100, 300), 6);
  });
});
