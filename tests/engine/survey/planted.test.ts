import { describe, expect, it } from 'vitest';
import { mostLikely } from '../../../src/engine/survey/mostLikely.ts';
import { snooped } from '../../../src/engine/survey/snooped.ts';
import { stepsWorth } from '../../../src/engine/survey/stepsWorth.ts';
import { strengthOf } from '../../../src/engine/survey/strength.ts';
import { testedIn } from '../../../src/engine/survey/tested.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Observation } from '../../../src/site/observation.ts';
import { inches } from '../../../src/units/inches.ts';
import { bigNetwork } from './bigNetwork.ts';
import { leastSigmas, planted } from './plantedNetworks.ts';
import { leastRedundancy, toldYard } from './plantedYard.ts';
import { networkOf, trueTape, type Truth } from './yardNetwork.ts';

describe('the reading that is most likely wrong', () => {
  it('[V11] a gross error planted in any tape of a redundant yard is named first, 95 times in 100', () => {
    const all = Array.from({ length: 150 }, (_, seed) => planted(seed + 1));
    expect(Math.min(...all.map(({ sigmas }) => sigmas))).toBeGreaterThanOrEqual(leastSigmas);
    expect(all.filter(({ place }) => place === 0).length).toBeGreaterThanOrEqual(0.95 * all.length);
    // and by itself, not among others
    expect(all.every(({ place, together }) => place !== 0 || together === 1)).toBe(true);
  }, 120_000);

  it('[V11] fence corners on two ties alone give it away nearly as often', () => {
    const all = Array.from({ length: 100 }, (_, seed) => planted(seed + 1, 2));
    expect(all.filter(({ place }) => place === 0).length).toBeGreaterThanOrEqual(0.9 * all.length);
  }, 120_000);

  it('[V11] and so it is in yards with less to spare, where others check the tape at all', () => {
    const all = Array.from({ length: 150 }, (_, seed) => toldYard(seed));
    expect(Math.min(...all.map(({ sigmas }) => sigmas))).toBeGreaterThanOrEqual(leastSigmas);
    const checked = all.filter(({ redundancy }) => redundancy >= leastRedundancy);
    expect(checked.length).toBeGreaterThan(100);
    for (const some of [all, checked])
      expect(some.filter(({ first }) => first).length).toBeGreaterThanOrEqual(0.95 * some.length);
  }, 120_000);

  const marks: Readonly<Record<string, readonly [number, number]>> = {
    a: [0, 0],
    b: [360, 0],
    c: [360, 240],
    d: [0, 240],
    e: [600, 100],
    f: [-200, 130],
  };
  const spots = new Map(
    Object.entries(marks).map(
      ([id, [x, y]]) => [`mark:${id}` as MarkId, { x, y, fixed: false }] as const,
    ),
  );
  const tape = (pair: string, more = 0): Observation => {
    const [from = 'a', to = 'b'] = pair;
    const [a, b] = [marks[from]!, marks[to]!];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) + more;
    return {
      kind: 'tape',
      from: `mark:${from}`,
      to: `mark:${to}`,
      length: inches(length),
      trust: null,
      label: '',
    };
  };

  it('[V12] says what all the others make of it, and how well they know', () => {
    // 20 ft read as 20'-6": the sides of the house and both its diagonals are true
    const seen = ['ab', 'bc', 'cd', 'ac', 'bd'].map((pair) => tape(pair));
    const [first, ...others] = snooped(networkOf(spots, [...seen, tape('da', 6)])).suspects;
    expect(others).toEqual([]);
    // with one reading to spare, all six go together
    expect(first?.ids).toHaveLength(6);
    const checked = [...seen, tape('da', 6), tape('ae'), tape('be'), tape('ce'), tape('de')];
    const [alone, ...more] = snooped(networkOf(spots, checked)).suspects;
    expect(more).toEqual([]);
    expect(alone?.ids).toEqual(['observation:0006']);
    expect(alone?.expects).toBeCloseTo(240, 6);
    expect(alone?.give).toBeGreaterThan(0.1);
    expect(alone?.give).toBeLessThan(2);
  });

  it('[V12] goes on to the next where two are wrong', () => {
    const pairs = 'ab bc cd da ac bd ae be ce de af bf cf df'.split(' ');
    const seen = pairs.map((pair) => tape(pair, { ab: 12, ce: -12 }[pair] ?? 0));
    const { suspects: found, more } = snooped(networkOf(spots, seen));
    expect(more).toBe(false);
    expect(found.map(({ ids }) => ids).toSorted()).toEqual([
      ['observation:0001'],
      ['observation:0009'],
    ]);
    // the last one has only good readings left about it
    const last = found.at(-1);
    const truth = last?.ids[0] === 'observation:0001' ? 360 : Math.hypot(240, 140);
    expect(last?.expects).toBeCloseTo(truth, 6);
  });

  it('[V12] names nothing where chance alone is in it', () => {
    const wrong = Array.from({ length: 100 }, (_, seed) => seed).filter((seed) => {
      const pairs = ['ab', 'bc', 'cd', 'da', 'ac', 'bd', 'ae', 'be', 'ce', 'de'];
      const seen = pairs.map((pair, n) => tape(pair, 0.2 * Math.sin(7 * seed + 3 * n)));
      return snooped(networkOf(spots, seen)).suspects.length > 0;
    });
    expect(wrong).toEqual([]);
  });

  it('[V12] a crowd of wrong readings has five named, and is told to be more', () => {
    const ids = Array.from({ length: 12 }, (_, n) => `mark:${n}` as MarkId);
    const truth: Truth = new Map(
      ids.map((id, n) => [id, { x: 170 * (n % 4) + 9 * n, y: 150 * Math.floor(n / 4) - 5 * n }]),
    );
    const tapes = ids.flatMap((from, a) => ids.slice(a + 1).map((to) => trueTape(truth, from, to)));
    const read = tapes.map((seen, n) =>
      seen.kind === 'tape' && n % 7 === 3
        ? { ...seen, length: inches(seen.length + 24 + n) }
        : seen,
    );
    const placed = new Map(ids.map((id) => [id, { ...truth.get(id)!, fixed: false }] as const));
    const { suspects, more } = snooped(networkOf(placed, read));
    expect(suspects).toHaveLength(5);
    expect(more).toBe(true);
    const wrong = suspects.map(({ ids: [first] }) => (Number(first?.slice(12)) - 1) % 7);
    expect(wrong).toEqual([3, 3, 3, 3, 3]);
  });

  it('[V12] in a large network fewer are tried, so that nobody waits', () => {
    expect(stepsWorth(bigNetwork(60, 150))).toBeGreaterThan(500);
    const large = bigNetwork(400, 1100);
    expect(stepsWorth(large)).toBeLessThan(150);
    expect(stepsWorth(large)).toBeGreaterThan(0);
    // the steps that a trial takes stay near to those that are worth the wait, one try aside
    const strength = strengthOf(large, large.spots);
    const { tried, steps } = mostLikely(large, testedIn(strength), strength, 12);
    expect(tried.length).toBeGreaterThan(0);
    expect(steps).toBeLessThanOrEqual(12 + 10);
  });
});
