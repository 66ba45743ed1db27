import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { slopeTexts } from '../../../src/drawing/tables/slopeTexts.ts';
import { holeTable } from '../../../src/drawing/tables/holeTable.ts';
import {
  exaggeration,
  exaggerations,
  exaggerationText,
} from '../../../src/drawing/tape/exaggeration.ts';
import { gradePieces } from '../../../src/drawing/tape/gradePieces.ts';
import { wholeRun } from '../../../src/drawing/tape/tapePiece.ts';
import { xAt } from '../../../src/drawing/tape/tapeReach.ts';
import { tapeStrip } from '../../../src/drawing/tape/tapeStrip.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { slopeAt } from '../../../src/engine/ground/gradeLine.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addShots } from '../../../src/site/edits/addShots.ts';
import { setLegGrade } from '../../../src/site/edits/setLegGrade.ts';
import { setLegWall } from '../../../src/site/edits/setLegWall.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence } from '../../engine/plainYard.ts';
import { overlapsOf, textsOf } from '../textsOf.ts';

const style = { system: 'feet', fraction: 8 } as const;
const line = fence(bare, [
  [0, 0],
  [1200, 0],
]);
const leg = Object.values(line.lines).flatMap((own) => legsOf(own).map(({ id }) => id))[0];
const id = leg ?? 'vertex:';

/** The fence over shots on both sides of it, so high at so many inches from its start. */
const onGround = (heights: readonly (readonly [x: number, z: number])[], site = line): Site =>
  addShots(
    site,
    heights.flatMap(([x, z]) => [-300, 300].map((y) => ({ x, y, z: inches(z), label: '' }))),
  );

const bank = onGround([
  [-10, 0],
  [400, 10],
  [800, 80],
  [1210, 84],
]);

const stripOf = (site: Site, profile = 1) => {
  const layout = layOutSite(site);
  const runs = layout.lines['line:1']?.runs ?? [];
  const strip = tapeStrip(
    site,
    layout,
    runs.map((run) => wholeRun(run, 'start')),
    { width: 10, style, profile },
  );
  return { strip, run: runs[0], layout };
};

const words = (site: Site): string[] => textsOf(stripOf(site).strip.atoms).map(({ text }) => text);

describe('the profile under a tape', () => {
  it('[D68] heights are drawn larger by the largest round number that has room', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 20, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        (rise, most) => {
          const times = exaggeration(rise, most);
          if (times < 1) {
            expect(rise * times).toBeLessThanOrEqual(2 * most + 1e-9);
            return;
          }
          expect(exaggerations).toContain(times);
          if (times > 1) expect(rise * times).toBeLessThanOrEqual(most);
          const larger = exaggerations.filter((other) => other > times);
          for (const other of larger) expect(rise * other).toBeGreaterThan(most);
        },
      ),
    );
    expect([1, 2, 0.5].map(exaggerationText)).toEqual([
      'heights and lengths to one scale',
      'heights drawn 2 times as large as lengths',
      'heights drawn 1/2 as large as lengths',
    ]);
  });

  it('[D68] lies under the tape with its exaggeration named, and no text over another', () => {
    const { strip } = stripOf(bank);
    expect(strip.profile).not.toBeNull();
    const { top, bottom, times } = strip.profile ?? { top: 0, bottom: 0, times: 0 };
    expect(words(bank).join(' ')).toContain(`Profile, ${exaggerationText(times)}.`);
    expect(bottom).toBeLessThanOrEqual(strip.height);
    expect(bottom - top).toBeLessThan(2.2);
    expect(overlapsOf(strip.atoms)).toEqual([]);
  });

  it('[D68] grades are told in percent, as few as the ground has', () => {
    // 10 in over 410 is 2.4 %, 70 over 400 is 17.5 %, 4 over 410 is 1 %
    expect(words(bank)).toEqual(expect.arrayContaining(['+2.4 %', '+17.5 %', '+1 %']));
    const known = stripOf(bank).run?.ground?.profile.known[0] ?? [];
    expect(gradePieces(known)).toHaveLength(3);
  });

  it('[D68] no profile where the ground is level, or nothing is known of it', () => {
    const level = onGround([
      [-10, 3],
      [1210, 3.5],
    ]);
    for (const site of [line, level]) expect(stripOf(site).strip.profile).toBeNull();
  });

  it('[D69] ground outside of the shots is a gap, said to be not known', () => {
    const half = onGround([
      [-10, 0],
      [600, 40],
    ]);
    expect(words(half)).toContain('not known');
    expect(words(half).join(' ')).toContain('In the gaps the ground is not known.');
    expect(words(bank)).not.toContain('not known');
  });
});

describe('closed ground on a tape', () => {
  const crossed = (site: Site): Site =>
    addFeature(
      site,
      {
        kind: 'utility',
        run: 'buried',
        label: '',
        service: 'gas',
        width: inches(2),
        tolerance: inches(18),
      },
      [
        { x: 500, y: -400 },
        { x: 500, y: 400 },
      ],
    );

  it('[D70] is named, and lies from edge to edge of the tolerance zone', () => {
    const { strip } = stripOf(crossed(line));
    const [reach] = strip.reaches;
    if (reach === undefined) throw new Error('expected a reach');
    // 500 in less and more half of 2 and 18
    expect(strip.closed).toEqual([
      { name: 'GAS', from: xAt(reach, inches(481)), to: xAt(reach, inches(519)) },
    ]);
    expect(words(crossed(line))).toContain('GAS');
  });

  it('[D70] on a slope it lies where the tape along the grade passes it', () => {
    const { strip, run } = stripOf(crossed(bank));
    const [reach] = strip.reaches;
    const grade = run?.ground?.grade;
    if (reach === undefined || grade === undefined) throw new Error('expected ground');
    expect(strip.closed[0]?.from).toBeCloseTo(xAt(reach, slopeAt(grade, inches(481))), 9);
  });
});

describe('slopes in words', () => {
  const texts = (site: Site): string[] => {
    const layout = layOutSite(site);
    return Object.values(layout.lines).flatMap((own) => slopeTexts(own, layout, site));
  };

  it('[D71] rise, steepest grade and the cut of its ends, where the fabric follows', () => {
    const plane = onGround([
      [-200, -30],
      [1400, 210],
    ]);
    // 15 % over 100 ft rises 15 ft; 72 × 0.15 is 10.8 in: 10 3/4 to the eighth
    expect(texts(plane)).toEqual([
      'Lengths are along the grade.',
      'A to B rises 15\'-0", steepest +15 %; follows the grade, ends of the fabric cut up to 10 3/4" out of square.',
    ]);
    const stepped = setLegGrade(plane, 'line:1', id, 'step');
    // eleven bays: 180 / 11 is 16.36
    expect(texts(stepped)[1]).toBe(
      'A to B rises 15\'-0", steepest +15 %; steps up by 16 3/8" at each post.',
    );
  });

  it('[D71] level ground and ground that nobody knows say nothing', () => {
    expect(texts(line)).toEqual([]);
    const level = onGround([
      [-10, 3],
      [1210, 3],
    ]);
    expect(texts(level)).toEqual([]);
  });

  it('[D71] a wall that steps is told without a grade', () => {
    const set = { kind: 'plate', side: inches(8) } as const;
    const wall = { width: inches(12), height: inches(24), rise: inches(-18), steps: 2, set };
    const site = setLegWall(line, { line: 'line:1', leg: id, wall });
    expect(texts(site)).toEqual(['A to B falls 1\'-6"; steps as the wall does.']);
    const layout = layOutSite(site);
    const cells = Object.values(layout.lines).flatMap((own) =>
      holeTable(own, layout, site).rows.flat(),
    );
    expect(cells).toContain('plate 8" square');
  });

  it('[D72] cores stand in the table in place of holes', () => {
    const set = { kind: 'cored', depth: inches(12), room: inches(1) } as const;
    const wall = { width: inches(12), height: inches(24), rise: inches(0), steps: 0, set };
    const site = setLegWall(line, { line: 'line:1', leg: id, wall });
    const layout = layOutSite(site);
    const [own] = Object.values(layout.lines);
    if (own === undefined) throw new Error('expected a line');
    const cells = holeTable(own, layout, site).rows.flat();
    // 2 3/8 and 1, to the eighth
    expect(cells).toContain('core 3 3/8" × 12"');
    expect(cells.some((cell) => /^\d+" × /.test(cell))).toBe(false);
  });
});
