import { describe, expect, it } from 'vitest';
import { newCarry } from '../../../src/engine/carry/carry.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { heldOf, surveyOf } from '../../../src/engine/survey/surveyOf.ts';
import { standsText } from '../../../src/engine/survey/standsText.ts';
import type { MarkId, ObservationId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { plainly, rowsAt } from './plainSolve.ts';
import { plainStrength } from './plainStrength.ts';
import { randomNetwork } from './randomNetwork.ts';
import { tapedSite } from './tapedSite.ts';

const surveyIn = (site: Site) => surveyOf(site, newCarry());

/** Marks of firm readings. */
const tapedIn = (site: Site): MarkId[] => [...surveyIn(site).taped];

/** Every pair of marks that no tape joins yet. */
const openPairs = (site: Site): (readonly [MarkId, MarkId])[] => {
  const known = new Set(
    Object.values(site.observations).flatMap((seen) =>
      seen.kind === 'tape' ? [[seen.from, seen.to].toSorted().join()] : [],
    ),
  );
  const marks = tapedIn(site);
  return marks.flatMap((a, n) =>
    marks
      .slice(n + 1)
      .flatMap((b) => (known.has([a, b].toSorted().join()) ? [] : [[a, b] as const])),
  );
};

/** The site with one more tape, which reads what the marks have. */
const withTape = (
  site: Site,
  [from, to]: readonly [MarkId, MarkId],
  id: ObservationId = 'observation:new',
): Site => {
  const [a, b] = [site.marks[from]!, site.marks[to]!];
  const length = inches(Math.hypot(b.x - a.x, b.y - a.y));
  const seen = { kind: 'tape', from, to, length, trust: null, label: '' } as const;
  return { ...site, observations: { ...site.observations, [id]: seen } };
};

/** How many marks hold to the body of before; 0 where another body has taken its place. */
const holding = (site: Site, before: ReadonlySet<MarkId>): number => {
  const marks = heldOf(site, newCarry())?.body?.marks ?? new Set<MarkId>();
  return [...before].every((id) => marks.has(id)) ? marks.size : 0;
};

/** The redundancy number of every reading, by a library. */
const redundanciesOf = (site: Site): Map<string, number> => {
  const plain = plainly(site);
  const rows = rowsAt(plain, plain.drawn);
  const { redundancies } = plainStrength(rows, plain.drawn.length, 1e6);
  return new Map(plain.equations.map(({ id }, n) => [id, redundancies[n]!] as const));
};

const stood = Array.from(
  { length: 400 },
  (_, seed) => surveyed(randomNetwork(seed).site, null).site,
);

describe('the tape that would help most', () => {
  it('[V14] no other tape holds more marks at once', () => {
    const seen = { tried: 0, several: 0 };
    for (const site of stood) {
      const held = heldOf(site, newCarry());
      const taped = tapedIn(site);
      if (held?.body == null || taped.length > 11 || held.body.marks.size === taped.length)
        continue;
      const { helps } = surveyIn(site);
      const before = held.body.marks;
      const sizes = openPairs(site).map((pair) => holding(withTape(site, pair), before));
      const most = Math.max(before.size, ...sizes);
      expect(helps).not.toBeNull();
      const ours = holding(withTape(site, [helps!.from, helps!.to]), before);
      expect(ours).toBe(most);
      seen.tried += 1;
      seen.several += Number(most > before.size + 1);
    }
    expect(seen.tried).toBeGreaterThan(40);
    expect(seen.several).toBeGreaterThan(3);
  }, 120_000);

  it('[V14] two houses apart hang together by the three tapes that it asks for one after the other', () => {
    const marks = {
      a: [0, 0],
      b: [360, 0],
      c: [360, 240],
      d: [900, 0],
      e: [1200, 0],
      f: [1200, 300],
    };
    let site = tapedSite(marks, ['ab', 'bc', 'ca', 'de', 'ef', 'fd']);
    const body = new Set(heldOf(site, newCarry())?.body?.marks);
    expect(body.size).toBe(3);
    const asked: string[] = [];
    for (let tape = 1; surveyIn(site).loose.length > 0; tape += 1) {
      expect(tape).toBeLessThanOrEqual(3);
      const { helps } = surveyIn(site);
      // each is pulled from the one house to the other
      expect([helps!.from, helps!.to].filter((id) => body.has(id))).toHaveLength(1);
      site = withTape(site, [helps!.from, helps!.to], `observation:new${tape}`);
      asked.push(`${helps!.from} ${helps!.to}`);
    }
    expect(asked).toHaveLength(3);
    expect(surveyIn(site).body?.marks.size).toBe(6);
  });

  it('[V14] where all hold, no other tape checks the reading that is checked least any better', () => {
    const seen = { tried: 0, none: 0 };
    for (const site of stood) {
      const { helps, loose, taped, stands } = surveyIn(site);
      if (loose.length > 0 || taped.length > 14 || taped.length < 3) continue;
      const before = redundanciesOf(site);
      const low = [...before].filter(([, value]) => value < 0.05).toSorted((a, b) => a[1] - b[1]);
      if (low.length === 0) {
        expect(helps).toBeNull();
        expect(['held', 'disagrees']).toContain(stands);
        seen.none += 1;
        continue;
      }
      const gains = openPairs(site).map((pair) => redundanciesOf(withTape(site, pair)));
      const best = (id: string): number => Math.max(0, ...gains.map((one) => one.get(id) ?? 0));
      // the least checked that any tape helps; of readings that are checked alike any may be meant
      const weak = low.find(([id, value]) => best(id) > value + 0.02);
      if (weak === undefined) continue;
      const alike = low.filter(([, value]) => Math.abs(value - weak[1]) < 1e-6);
      expect(helps).not.toBeNull();
      const after = redundanciesOf(withTape(site, [helps!.from, helps!.to]));
      expect(alike.some(([id]) => (after.get(id) ?? 0) > best(id) - 1e-4)).toBe(true);
      seen.tried += 1;
    }
    expect(seen.tried).toBeGreaterThan(5);
    expect(seen.none).toBeGreaterThan(0);
  }, 120_000);
});

describe('marks that have not come to rest', () => {
  it('[V9] are told of', () => {
    const { site } = randomNetwork(3);
    expect(surveyIn(surveyed(site, null).site).settled).toBe(true);
    // as drawn they are still on their way
    const survey = surveyIn(site);
    expect(survey.settled).toBe(false);
    expect(standsText(survey)).toMatch(/^The readings do not bring the marks to rest/);
  });
});
