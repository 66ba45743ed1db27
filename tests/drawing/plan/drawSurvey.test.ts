import { describe, expect, it } from 'vitest';
import { drawSurvey } from '../../../src/drawing/plan/drawSurvey.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { fixMarks } from '../../../src/site/edits/fixMarks.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';

const house = addFeature(namedSite('House'), { kind: 'building', label: 'House' }, [
  { x: 0, y: 0 },
  { x: 360, y: 0 },
  { x: 360, y: 240 },
  { x: 0, y: 240 },
]);
const tape = (site: Site, from: number, to: number, length: number): Site =>
  setTape(site, `mark:${from}`, `mark:${to}`, inches(length));
const drawn = (site: Site) => {
  const stood = surveyed(site, null).site;
  return drawSurvey(stood, layOutSite(stood));
};
const pensOf = (site: Site): string[] =>
  drawn(site).flatMap((one) => ('pen' in one && one.pen !== null ? [one.pen] : []));
const textsOf = (site: Site): string[] =>
  drawn(site).flatMap((one) => (one.kind === 'text' ? [one.text] : []));

const sides = [
  [1, 2, 360],
  [2, 3, 240],
  [3, 4, 360],
  [4, 1, 240],
] as const;
const walls = sides.reduce((so, [from, to, length]) => tape(so, from, to, length), house);
const diagonal = Math.hypot(360, 240);

describe('what was taped, on the pad', () => {
  it('[D80] a tape across open ground has its reading, one along a wall has the wall’s', () => {
    expect(textsOf(tape(house, 1, 2, 360))).toEqual([]);
    expect(textsOf(tape(walls, 1, 3, 432))).toEqual([`36'-0"`]);
    expect(pensOf(tape(walls, 1, 3, 432)).filter((pen) => pen === 'tape')).toHaveLength(1);
  });

  it('[D80] marks that nothing holds have a broken ring, fixed ones a full one', () => {
    expect(pensOf(house)).toEqual([]);
    const rings = drawn(walls).filter((one) => one.kind === 'circle' && one.pen === 'loose');
    expect(rings).toHaveLength(2);
    expect(pensOf(fixMarks(house, ['mark:1']))).toEqual(['fixed']);
  });

  it('[D80] a mark that one tape holds has a broken line through it, the way that it may still give', () => {
    // of the corners 2 and 4 one is held by three tapes, the other by the wall from corner 1 alone
    const three = [
      [1, 2, 360],
      [2, 3, 240],
      [1, 3, diagonal],
      [1, 4, 240],
    ] as const;
    const site = three.reduce((so, [from, to, length]) => tape(so, from, to, length), house);
    const [line, ...more] = drawn(site).filter(
      (one) => one.kind === 'polyline' && one.pen === 'loose',
    );
    expect(more).toEqual([]);
    if (line?.kind !== 'polyline') throw new Error('expected one line');
    const [from, to] = line.points;
    // square to the wall that holds it, which goes north
    expect(from?.y).toBeCloseTo(240, 6);
    expect(to?.y).toBeCloseTo(240, 6);
    expect(Math.abs((from?.x ?? 0) - (to?.x ?? 0))).toBeCloseTo(72, 6);
  });

  it('[D80] the reading that is most likely wrong is drawn over its wall, in the ink of a stop', () => {
    const whole = tape(tape(walls, 1, 3, diagonal), 2, 4, diagonal);
    const square = addObservation(whole, {
      kind: 'square',
      at: 'mark:1',
      from: 'mark:4',
      to: 'mark:2',
      trust: null,
      label: '',
    });
    const wrong = tape(square, 2, 3, 252);
    expect(pensOf(wrong)).toContain('stop');
    expect(textsOf(wrong)).toContain(`21'-0"?`);
  });

  it('[D80] what is read square off a line ends on it', () => {
    const off = addObservation(house, {
      kind: 'offset',
      at: 'mark:3',
      from: 'mark:1',
      to: 'mark:2',
      distance: inches(240),
      trust: null,
      label: '',
    });
    const [line] = drawn(off);
    expect(line).toMatchObject({
      kind: 'polyline',
      points: [
        { x: 360, y: 240 },
        { x: 360, y: 0 },
      ],
    });
  });
});
