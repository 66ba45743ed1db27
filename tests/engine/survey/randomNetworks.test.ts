import { describe, expect, it } from 'vitest';
import { newCarry } from '../../../src/engine/carry/carry.ts';
import { reachOf } from '../../../src/engine/survey/reachOf.ts';
import type { Survey } from '../../../src/engine/survey/survey.ts';
import { networksOf, surveyed } from '../../../src/engine/survey/surveyed.ts';
import { surveyOf } from '../../../src/engine/survey/surveyOf.ts';
import { slack } from '../../../src/geometry/tolerance.ts';
import type { ObservationId } from '../../../src/site/ids.ts';
import { observationSchema } from '../../../src/site/observation.ts';
import type { Site } from '../../../src/site/site.ts';
import { costAt, offs, plainly, plainSolve, rowsAt, type Plain } from './plainSolve.ts';
import { plainStrength } from './plainStrength.ts';
import { randomNetwork } from './randomNetwork.ts';

/** Inches: a hundredth of what a tape is read to. Derivatives by differences are good to 1e-11. */
const place = 0.002;
/** Of a sigma, of an error, of a standard deviation: ten times what the differences leave of them. */
const [residual, redundancy, standardised] = [1e-4, 1e-4, 1e-3];
/** Two sums of squares of one lowest place differ by rounding alone. */
const same = 1e-6;
/** Inches: what is known no better need not agree, since half a foot of it costs next to nothing. */
const known = 12;

interface Both {
  readonly site: Site;
  readonly stood: Site;
  readonly plain: Plain;
  readonly ours: Float64Array;
  readonly theirs: Float64Array;
  readonly survey: Survey;
}

/** Every way between two marks and every coordinate: how it goes with the unknowns, and what it is. */
const figuresOf = ({ free }: Plain, x: Float64Array) => {
  const size = x.length;
  const coordinates = Array.from(x, (value, n) => ({
    value,
    by: new Float64Array(size).with(n, 1),
  }));
  const ways = free.flatMap((_, a) =>
    free.slice(a + 1).flatMap((_other, k) => {
      const b = a + 1 + k;
      const [dx, dy] = [x[2 * b]! - x[2 * a]!, x[2 * b + 1]! - x[2 * a + 1]!];
      const value = Math.hypot(dx, dy);
      const by = new Float64Array(size);
      by.set([-dx / value, -dy / value], 2 * a);
      by.set([dx / value, dy / value], 2 * b);
      return value < 1 ? [] : [{ value, by }];
    }),
  );
  return [...coordinates, ...ways];
};

/** By how much the figures that are known to a foot differ at most, and how many these are. */
const figuresApart = (plain: Plain, ours: Float64Array, theirs: Float64Array) => {
  const strength = plainStrength(rowsAt(plain, theirs), theirs.length, 1e6);
  const own = figuresOf(plain, ours);
  const apart = figuresOf(plain, theirs).flatMap(({ value, by }, n) => {
    const sigma = strength.sigmaOf(by);
    return sigma === null || sigma > known ? [] : [Math.abs(own[n]!.value - value)];
  });
  return { most: Math.max(0, ...apart), count: apart.length };
};

/** Whether a reading is of the direction between two marks that have come to stand on one spot: it says nothing. */
const isOfOneSpot = ({ observations, marks }: Site, id: ObservationId): boolean => {
  const seen = observations[id]!;
  if (seen.kind !== 'bearing') return false;
  const [from, to] = [marks[seen.from]!, marks[seen.to]!];
  return Math.hypot(to.x - from.x, to.y - from.y) < slack;
};

/** Compares what is said of every reading, but for fixes, which check nothing. */
const compareReadings = ({ site, stood, plain, theirs, survey }: Both): void => {
  const reach = Math.max(...networksOf(site).map(reachOf));
  const found = plainStrength(rowsAt(plain, theirs), theirs.length, reach);
  // known about as well as the network is wide: whether that is known is a choice
  if (found.singular.some((value) => value * reach > 0.1 && value * reach < 10)) return;
  seen.readings += plain.equations.length;
  offs(plain, theirs).forEach((off, n) => {
    const { id, sigma } = plain.equations[n]!;
    if (isOfOneSpot(stood, id)) return;
    const ours = survey.readings[id]!;
    const least = found.redundancies[n]!;
    expect(Math.abs(ours.residual / sigma - off)).toBeLessThan(residual);
    expect(Math.abs(ours.redundancy - least)).toBeLessThan(redundancy);
    if (least < 0.01) return;
    expect(Math.abs(ours.standardised! - off / Math.sqrt(least))).toBeLessThan(standardised);
  });
};

const seen = { apart: 0, better: 0, unsettled: 0, figures: 0, readings: 0, loose: 0, held: 0 };

/**
 * Compares one network. Where the two end at different places from a sketch so far off, both may be
 * right: then the other computation starts from ours and must stay there.
 */
const compare = (seed: number): void => {
  const { site } = randomNetwork(seed);
  const plain = plainly(site);
  const stood = surveyed(site, null).site;
  const survey = surveyOf(stood, newCarry());
  if (!survey.settled) {
    seen.unsettled += 1;
    return;
  }
  const ours = Float64Array.from(
    plain.free.flatMap((id) => [stood.marks[id]!.x, stood.marks[id]!.y]),
  );
  const cost = costAt(plain, ours);
  let theirs = plainSolve(plain);
  let apart = figuresApart(plain, ours, theirs);
  if (apart.most > place || Math.abs(cost - costAt(plain, theirs)) > same * (1 + cost)) {
    seen.apart += 1;
    seen.better += Number(cost > costAt(plain, theirs) + same);
    theirs = plainSolve(plain, ours);
    apart = figuresApart(plain, ours, theirs);
  }
  expect(apart.most, `places of network ${seed}`).toBeLessThan(place);
  expect(Math.abs(cost - costAt(plain, theirs))).toBeLessThan(same * (1 + cost));
  compareReadings({ site, stood, plain, ours, theirs, survey });
  seen.figures += apart.count;
  seen.loose += Number(survey.loose.length > 2);
  seen.held += Number(survey.loose.length === 0);
};

const count = 500;
const chunk = 50;
const firsts = Array.from({ length: count / chunk }, (_, n) => n * chunk);

describe('500 random networks, the sketch up to 30 % off, against a computation of its own', () => {
  it.each(firsts)(
    '[V6] networks %i and on: places, residuals, redundancies, standardised residuals',
    (first) => {
      for (let seed = first; seed < first + chunk; seed += 1) {
        compare(seed);
      }
    },
    120_000,
  );

  it('[V6] that holds for all but a few, which say so themselves', () => {
    expect(seen.unsettled).toBeLessThanOrEqual(15);
    // a sketch so far off now and then lies between two shapes that both fit, seldom one far better
    expect(seen.apart).toBeLessThanOrEqual(40);
    expect(seen.better).toBeLessThanOrEqual(10);
    expect(seen.figures).toBeGreaterThan(20_000);
    expect(seen.readings).toBeGreaterThan(5000);
    expect(seen.loose).toBeGreaterThan(50);
    expect(seen.held).toBeGreaterThan(15);
  });

  it('[V6] they have all kinds of observation, fixed marks, and 4 to 25 marks', () => {
    const networks = Array.from({ length: count }, (_, seed) => randomNetwork(seed).site);
    const kinds = networks.flatMap(({ observations }) =>
      Object.values(observations).map(({ kind }) => kind),
    );
    const all = observationSchema.options.map(({ shape }) => shape.kind.value);
    for (const kind of all) expect(kinds.filter((one) => one === kind).length).toBeGreaterThan(100);
    const marks = networks.map((site) => Object.keys(site.marks).length);
    expect([Math.min(...marks), Math.max(...marks)]).toEqual([4, 25]);
    const fixed = networks.filter((site) => Object.values(site.marks).some((one) => one.fixed));
    expect(fixed.length).toBeGreaterThan(100);
  });
});
