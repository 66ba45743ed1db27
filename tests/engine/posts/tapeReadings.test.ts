import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import type { Run } from '../../../src/engine/layout.ts';
import { tapeReadings } from '../../../src/engine/posts/tapeReadings.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches, sum } from '../../../src/units/inches.ts';
import { lengthSteps } from '../../../src/units/lengthSteps.ts';
import { roundLength } from '../../../src/units/roundLength.ts';
import { bare, fence } from '../plainYard.ts';
import { randomSite } from '../randomSite.ts';

type Style = Site['lengths'];

const style: fc.Arbitrary<Style> = fc.record({
  system: fc.constantFrom('feet', 'inches', 'decimal feet', 'mm', 'm'),
  fraction: fc.constantFrom(2, 4, 8, 16, 32),
});
const hook = fc.constantFrom('start' as const, 'end' as const);

const runsOf = (site: Site): Run[] =>
  Object.values(layOutSite(site).lines).flatMap(({ runs }) => runs);

const eighths: Style = { system: 'feet', fraction: 8 };

describe('tapeReadings', () => {
  it('[P6] as printed in any style, offsets and bays add up to the rounded run exactly', () => {
    fc.assert(
      fc.property(randomSite, hook, style, (site, end, lengths) => {
        for (const run of runsOf(site)) {
          const { lead, spaces, tail, total } = tapeReadings(run, end, lengths);
          const steps = [lead, ...spaces, tail].map((length) => lengthSteps(length, lengths));
          const printed = steps.reduce((so, step) => so + step, 0);
          expect(printed).toBe(lengthSteps(run.length, lengths));
          expect(printed).toBe(lengthSteps(total, lengths));
        }
      }),
    );
  });

  it('[P6] in feet and inches the figures themselves add up to the last bit', () => {
    fc.assert(
      fc.property(randomSite, hook, (site, end) => {
        for (const run of runsOf(site)) {
          const { lead, spaces, tail, total } = tapeReadings(run, end, eighths);
          expect(sum([lead, ...spaces, tail])).toBe(total);
        }
      }),
    );
  });

  it('[P6] every reading is its own station, rounded once, however many came before', () => {
    fc.assert(
      fc.property(randomSite, hook, style, (site, end, lengths) => {
        for (const run of runsOf(site)) {
          const exact = run.posts.map(({ station }) =>
            end === 'start' ? station : inches(run.length - station),
          );
          const { posts } = tapeReadings(run, end, lengths);
          const ordered = end === 'start' ? exact : exact.toReversed();
          expect(posts.map(({ reading }) => reading)).toEqual(
            ordered.map((station) => roundLength(station, lengths)),
          );
        }
      }),
    );
  });

  it('[P6] thirds of a foot do not drift: 10 ft in nine bays', () => {
    const [run] = runsOf(
      fence(
        { ...bare, specs: { 'spec:six': { ...bare.specs['spec:six']!, maxBay: inches(14) } } },
        [
          [0, 0],
          [120, 0],
        ],
      ),
    );
    if (run === undefined) throw new Error('no run');
    const { posts, spaces } = tapeReadings(run, 'start', eighths);
    // 13 1/3 in a bay: 13 3/8, 26 5/8, 40 …
    expect(posts.map(({ reading }) => reading)).toEqual([
      0, 13.375, 26.625, 40, 53.375, 66.625, 80, 93.375, 106.625, 120,
    ]);
    expect(spaces.slice(0, 3)).toEqual([13.375, 13.25, 13.375]);
  });

  it('[P6] hooked at the end, the tape reads from the end', () => {
    const [run] = runsOf(
      fence(bare, [
        [0, 0],
        [250, 0],
      ]),
    );
    if (run === undefined) throw new Error('no run');
    const there = tapeReadings(run, 'start', eighths);
    const back = tapeReadings(run, 'end', eighths);
    expect(back.posts.map(({ post }) => post)).toEqual(
      there.posts.map(({ post }) => post).toReversed(),
    );
    expect(back.posts.map(({ reading }) => reading)).toEqual([0, 83.375, 166.625, 250]);
  });
});
