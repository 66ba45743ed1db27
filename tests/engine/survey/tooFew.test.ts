import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { fixMarks } from '../../../src/site/edits/fixMarks.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';

type Spot = readonly [number, number];
const mark = (n: number): MarkId => `mark:${n}`;
const marks = (...ids: readonly number[]): MarkId[] => ids.map(mark);

/** Marks at these places, 1 first. */
const drawn = (spots: readonly Spot[]): Site =>
  spots.reduce((site, [x, y]) => addMark(site, { x, y }), namedSite('Too few'));

/** Tapes that read a little more than what is drawn. */
const taped = (site: Site, ...pairs: readonly Spot[]): Site =>
  pairs.reduce((so, [a, b]) => {
    const length = distance(so.marks[mark(a)]!, so.marks[mark(b)]!);
    return setTape(so, mark(a), mark(b), inches(length + 3));
  }, site);

/** Every tape between some marks. */
const among = (...ids: readonly number[]): Spot[] =>
  ids.flatMap((a, n) => ids.slice(n + 1).map((b): Spot => [a, b]));

const survey = (site: Site) => layOutSite(surveyed(site, null).site).survey;

const house: readonly Spot[] = [
  [0, 0],
  [360, 0],
  [360, 240],
  [0, 240],
];

describe('too few tapes', () => {
  it('[V13] of a chain nothing is held but what one tape holds', () => {
    const chain = drawn([
      [0, 0],
      [200, 40],
      [400, 0],
      [600, 50],
      [800, 0],
    ]);
    const found = survey(taped(chain, [1, 2], [2, 3], [3, 4], [4, 5]));
    expect(found.stands).toBe('loose');
    expect(found.body).toBeNull();
    expect(found.loose).toHaveLength(3);
    expect(found.spare).toBe(0);
    expect(found.settled).toBe(true);
  });

  it('[V13] of an arm with a hinge the first mark swings one way, the second goes anywhere', () => {
    const site = drawn([...house, [660, 0], [660, -200]]);
    const found = survey(taped(site, ...among(1, 2, 3, 4), [2, 5], [5, 6]));
    expect(found.body?.marks).toEqual(new Set(marks(1, 2, 3, 4)));
    expect(found.loose).toEqual(marks(5, 6));
    const [across, ...no] = found.ways[mark(5)]!;
    expect(no).toEqual([]);
    // square to its tape, which runs along the front of the house
    expect(Math.abs(across!.y)).toBeGreaterThan(0.99);
    expect(found.ways[mark(6)]).toHaveLength(2);
  });

  it('[V13] of two houses and one tape between the one with more corners is held', () => {
    const other = house.map(([x, y]): Spot => [x + 700, y + 60]);
    const site = drawn([...house, [180, 330], ...other]);
    const tapes = [...among(1, 2, 3, 4, 5), ...among(6, 7, 8, 9)];
    const found = survey(taped(site, ...tapes, [2, 6]));
    expect(found.loose).toEqual(marks(6, 7, 8, 9));
    expect(found.body?.marks).toEqual(new Set(marks(1, 2, 3, 4, 5)));
    // a second tape leaves it one way to go, a third none
    expect(survey(taped(site, ...tapes, [2, 6], [3, 6])).loose).toEqual(marks(7, 8, 9));
    expect(survey(taped(site, ...tapes, [2, 6], [3, 6], [3, 9])).loose).toEqual([]);
  });

  it('[V13] what is tied to one fixed mark turns about it, to two it does not', () => {
    const tapes = taped(drawn(house), ...among(1, 2, 3, 4));
    const one = survey(fixMarks(tapes, marks(1)));
    expect(one.loose).toEqual([]);
    expect(one.body?.fast).toBe(false);
    const two = survey(fixMarks(tapes, marks(1, 3)));
    expect(two.body?.fast).toBe(true);
  });

  it('[V13] a mark drawn on the line between its ties is held off it, as far as they say', () => {
    const site = drawn([...house, [180, 0.5]]);
    const found = survey(taped(site, ...among(1, 2, 3, 4), [1, 5], [2, 5]));
    expect(found.loose).toEqual([]);
    // the tapes read more than what was drawn, so that it stands well off the line
    const { site: stood } = surveyed(taped(site, ...among(1, 2, 3, 4), [1, 5], [2, 5]), null);
    expect(Math.abs(stood.marks[mark(5)]!.y - stood.marks[mark(1)]!.y)).toBeGreaterThan(20);
  });
});
