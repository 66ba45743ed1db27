import { describe, expect, it } from 'vitest';
import { explode } from '../../../src/drawing/explode.ts';
import { drawFixes } from '../../../src/drawing/plan/drawFixes.ts';
import { drawLoneMarks, drawNamelessMarks } from '../../../src/drawing/plan/drawLoneMarks.ts';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { fitPlan } from '../../../src/drawing/plan/fitPlan.ts';
import { padPlan } from '../../../src/drawing/plan/padPlan.ts';
import type { Primitive } from '../../../src/drawing/primitive.ts';
import { legend } from '../../../src/drawing/sheet/plan/legend.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { addMark } from '../../../src/site/edits/addMark.ts';
import { addObservation } from '../../../src/site/edits/addObservation.ts';
import { fixMarks } from '../../../src/site/edits/fixMarks.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import { setTape } from '../../../src/site/edits/setTape.ts';
import type { MarkId } from '../../../src/site/ids.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { wayYard, swing } from '../../engine/wayYard.ts';
import { textsOf } from '../textsOf.ts';

const bare = wayYard(swing);
const at = { x: 4000, y: 3000 };
const there = Object.keys(bare.marks);

/** The id of the mark that was added last. */
const added = (site: Site): MarkId =>
  (Object.keys(site.marks).find((id) => !there.includes(id)) ?? 'mark:0') as MarkId;

const named = addMark(bare, at, ' NE pin ');
const nameless = addMark(bare, at);
const walked = addObservation(named, {
  kind: 'fix',
  mark: added(named),
  x: at.x,
  y: at.y,
  accuracy: inches(100),
  label: '',
});

const signs = (drawn: readonly Primitive[]) =>
  drawn.flatMap((one) => (one.kind === 'sign' && one.sign === 'mark' ? [one.at] : []));
const names = (drawn: readonly Primitive[]) =>
  drawn.flatMap((one) => (one.kind === 'text' && one.ink === 'survey' ? [one.text] : []));
const circles = (drawn: readonly Primitive[]) =>
  drawn.filter((one) => one.kind === 'circle' && one.pen === 'accuracy');
const keyOf = (site: Site): string[] =>
  textsOf(legend(site, layOutSite(site), 8, null).atoms).map(({ text }) => text);

describe('marks on which nothing stands', () => {
  it('[D76] are crosses with their names on sheet and pad; without a name on the pad alone', () => {
    for (const plan of [drawPlan, padPlan]) {
      const drawn = plan(named, layOutSite(named));
      expect([signs(drawn), names(drawn)]).toEqual([[at], ['NE pin']]);
    }
    expect(signs(drawPlan(nameless, layOutSite(nameless)))).toEqual([]);
    expect(signs(padPlan(nameless, layOutSite(nameless)))).toEqual([at]);
    expect(signs(padPlan(bare, layOutSite(bare)))).toEqual([]);
  });

  it('[D76] are in the key where the plan has them', () => {
    expect(keyOf(named)).toContain('mark on the ground');
    expect(keyOf(nameless).join()).not.toContain('mark on the ground');
    expect(keyOf(walked)).toContain('mark on the ground; rough: by GPS, not taped');
  });

  it('[D76] are said to be rough while only satellites say where they are', () => {
    expect(names(drawLoneMarks(walked))).toEqual(['NE pin (rough)']);
    const [other] = there as MarkId[];
    const taped = setTape(walked, added(named), other ?? 'mark:0', inches(900));
    expect(names(drawLoneMarks(taped))).toEqual(['NE pin']);
    expect(names(drawLoneMarks(fixMarks(walked, [added(named)])))).toEqual(['NE pin']);
    expect(names(drawLoneMarks(moveMark(walked, added(named), { x: 0, y: 0 })))).toEqual([
      'NE pin',
    ]);
  });

  it('[D76] have names that are led out only while there are few', () => {
    const many = (count: number): Site =>
      Array.from({ length: count }).reduce<Site>(
        (site, _, n) => addMark(site, { x: n * 100, y: 0 }, `P${n}`),
        bare,
      );
    const farOf = (site: Site) =>
      new Set(drawLoneMarks(site).flatMap((one) => (one.kind === 'text' ? [one.far] : [])));
    expect([...farOf(many(60))]).toEqual([undefined]);
    expect([...farOf(many(61))]).toEqual(['leave out']);
  });

  it('[D76] are as large on every scale: two laths of 0.12 in across', () => {
    for (const scale of [1 / 12, 1 / 240]) {
      const [cross] = explode(drawNamelessMarks(nameless), { origin: at, scale });
      const steps = cross?.do === 'stroke' ? cross.outline : [];
      const xs = steps.flatMap((step) => ('x' in step ? [step.x] : []));
      expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(0.12, 9);
    }
  });
});

describe('places found by satellites', () => {
  it('[D77] have a circle on the pad that holds them 95 times in 100, round what was found', () => {
    const put = moveMark(walked, added(named), { x: 0, y: 0 });
    const [circle] = circles(padPlan(put, layOutSite(put)));
    // 2.4477 standard deviations: Rayleigh distribution (from memory)
    expect(circle).toMatchObject({ centre: at });
    expect(circle?.kind === 'circle' ? circle.radius : 0).toBeCloseTo(244.77, 1);
    expect(circles(drawPlan(walked, layOutSite(walked)))).toEqual([]);
    expect(drawFixes(named)).toEqual([]);
  });

  it('[D77] make a view of all no larger than their marks do', () => {
    expect(circles(fitPlan(walked, layOutSite(walked)))).toEqual([]);
    expect(signs(fitPlan(walked, layOutSite(walked)))).toEqual([at]);
  });
});
