import { describe, expect, it } from 'vitest';
import { layOutFrom } from '../../../src/engine/layOutFrom.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { surveyed } from '../../../src/engine/survey/surveyed.ts';
import { standsText } from '../../../src/engine/survey/standsText.ts';
import { suspectText } from '../../../src/engine/survey/suspectText.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Mark } from '../../../src/site/mark.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { radians } from '../../../src/units/radians.ts';
import { namedSite } from '../../store/namedSite.ts';

/** A house of 30 ft by 20 ft, sketched a foot or two off. */
const sketched = addFeature(namedSite('House'), { kind: 'building', label: 'House' }, [
  { x: 5, y: -8 },
  { x: 372, y: 10 },
  { x: 350, y: 225 },
  { x: -12, y: 251 },
]);

const tape = (site: Site, from: number, to: number, length: number): Site =>
  setTape(site, `mark:${from}`, `mark:${to}`, inches(length));
const diagonal = Math.hypot(360, 240);
const sides = [
  [1, 2, 360],
  [2, 3, 240],
  [3, 4, 360],
  [4, 1, 240],
] as const;
const walls = sides.reduce((so, [from, to, length]) => tape(so, from, to, length), sketched);

const standing = (drawn: Site) => {
  const { site } = surveyed(drawn, null);
  const apart = (a: MarkId, b: MarkId) => distance(site.marks[a]!, site.marks[b]!);
  return { site, apart, ...layOutSite(site) };
};

describe('what tapes say', () => {
  it('[V22] a sketch is a sketch', () => {
    expect(standing(sketched).survey.stands).toBe('sketched');
  });

  it('[V22] four sides leave two marks loose, and a diagonal would help', () => {
    const { survey, apart } = standing(walls);
    expect(apart('mark:1', 'mark:2')).toBeCloseTo(360, 4);
    expect(survey.stands).toBe('loose');
    expect(survey.loose).toHaveLength(2);
    expect([survey.helps?.from, survey.helps?.to]).toEqual(['mark:1', 'mark:3']);
  });

  it('[V22] one diagonal holds them, a second checks them', () => {
    const one = standing(tape(walls, 1, 3, diagonal));
    expect(one.survey.loose).toEqual([]);
    expect(one.survey.stands).toBe('unchecked');
    expect(one.survey.helps).toEqual({ from: 'mark:2', to: 'mark:4' });
    expect(one.apart('mark:2', 'mark:4')).toBeCloseTo(diagonal, 4);
    const two = standing(tape(tape(walls, 1, 3, diagonal), 2, 4, diagonal));
    expect(two.survey.stands).toBe('held');
    expect(two.survey.helps).toBeNull();
  });

  it('[V22] square corners show which tape is a foot off', () => {
    const corners = ([1, 2, 3, 4] as const).reduce(
      (so, n) =>
        addObservation(so, {
          kind: 'square',
          at: `mark:${n}`,
          from: `mark:${((n + 2) % 4) + 1}`,
          to: `mark:${(n % 4) + 1}`,
          trust: null,
          label: '',
        }),
      sketched,
    );
    const wrong = [
      [1, 2, 360],
      [2, 3, 252],
      [3, 4, 360],
      [4, 1, 240],
      [1, 3, diagonal],
      [2, 4, diagonal],
    ] as const;
    const { site, posts, survey, flags } = standing(
      wrong.reduce((so, [from, to, length]) => tape(so, from, to, length), corners),
    );
    expect(survey.stands).toBe('disagrees');
    expect(survey.suspects.map((one) => suspectText(site, posts, one))).toEqual([
      `House corner 2 to House corner 3 reads 21'-0", everything else says 20'-0": tape it again`,
    ]);
    expect(flags).toMatchObject([{ level: 'settle', rule: 'reading disagrees' }]);
  });

  it('[V12] two tapes of the same marks that cannot be told apart are named by what they read', () => {
    const twice = addObservation(tape(tape(walls, 1, 3, diagonal), 2, 4, diagonal), {
      kind: 'tape',
      from: 'mark:1',
      to: 'mark:2',
      length: inches(400),
      trust: null,
      label: '',
    });
    const { 'observation:1': first, 'observation:7': second } = twice.observations;
    const lone = { ...twice, observations: { 'observation:1': first!, 'observation:7': second! } };
    const { site, posts, survey } = standing(lone);
    expect(survey.suspects.map((one) => suspectText(site, posts, one))).toEqual([
      `House corner 1 to House corner 2 reads 33'-4", everything else says 30'-0": tape it again; or House corner 1 to House corner 2 at 30'-0", which cannot be told from it`,
    ]);
  });

  it('[V9] readings that would take a mark beyond ten miles leave it where it is drawn, and it is told', () => {
    const mark = (x: number): Mark => ({ x, y: 0, label: '', fixed: false });
    const far: Site = {
      ...namedSite('Far'),
      marks: { 'mark:1': mark(6e5), 'mark:2': mark(6e5 + 9) },
    };
    const { site, survey } = standing(tape(far, 1, 2, 3e5));
    expect(site.marks).toEqual(far.marks);
    expect(standsText(survey)).toMatch(/do not bring the marks to rest/);
  });

  it('[V24] a direction between marks on one spot says nothing: they are loose, and nothing disagrees', () => {
    const [one, two, three] = ['mark:1', 'mark:2', 'mark:3'] as const;
    const at = (x: number): Mark => ({ x, y: 0, label: '', fixed: false });
    const spot: Site = {
      ...namedSite('Spot'),
      marks: { [one]: at(0), [two]: at(0), [three]: at(300) },
    };
    const held = tape(spot, 1, 3, 300);
    for (const seen of [
      { kind: 'bearing', from: one, to: two, bearing: radians(1) },
      { kind: 'square', at: one, from: two, to: three },
      { kind: 'offset', at: three, from: one, to: two, distance: inches(40) },
    ] as const) {
      const { survey } = standing(addObservation(held, { ...seen, trust: null, label: '' }));
      expect([survey.stands, survey.loose]).toEqual(['loose', [two]]);
    }
  });

  it('[V7] keeps a sketch that fits to the last bit', () => {
    const { site } = surveyed(
      tape(sketched, 1, 2, distance(sketched.marks['mark:1']!, sketched.marks['mark:2']!)),
      null,
    );
    expect(site.marks).toBe(sketched.marks);
  });

  it('[V23] takes over the marks and what is said of the network that no edit touched', () => {
    const corner = (n: number, x: number, y: number): Site['marks'] => ({
      [`mark:far${n}`]: { x: 5000 + x, y: 5000 + y, label: '', fixed: false },
    });
    const far = { ...corner(1, 0, 0), ...corner(2, 200, 0), ...corner(3, 90, 150) };
    const two: Site = { ...walls, marks: { ...walls.marks, ...far } };
    const triangle = [
      ['mark:far1', 'mark:far2'],
      ['mark:far2', 'mark:far3'],
      ['mark:far1', 'mark:far3'],
    ] as const;
    const both = triangle.reduce((so, [a, b]) => setTape(so, a, b, inches(190)), two);
    const before = surveyed(both, null);
    const laid = layOutFrom(before.site, null);
    const edited = tape(both, 1, 3, diagonal);
    const after = surveyed(edited, before);
    for (const id of ['mark:far1', 'mark:far2', 'mark:far3'] as const)
      expect(after.site.marks[id]).toBe(before.site.marks[id]);
    expect(after.site).toEqual(surveyed(edited, null).site);
    const again = layOutFrom(after.site, laid);
    expect(again.layout.survey).toEqual(layOutSite(after.site).survey);
    const judged = (pieces: typeof laid.pieces) =>
      [...(pieces.get('network') ?? [])].find(([id]) => id === 'observation:5')?.[1];
    expect(judged(again.pieces)).toBeDefined();
    expect(judged(again.pieces)).toBe(judged(laid.pieces));
  });
});
