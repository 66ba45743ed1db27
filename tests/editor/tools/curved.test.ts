import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowKnob } from '../../../src/editor/bowKnob.ts';
import { select } from '../../../src/editor/tools/select/select.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { nearestOnTrack } from '../../../src/geometry/track.ts';
import { addFeature } from '../../../src/site/edits/addFeature.ts';
import { setLengths } from '../../../src/site/edits/setLengths.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import { legTrack } from '../../../src/site/legTrack.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { saveSite } from '../../../src/site/saveSite.ts';
import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { bare, fence, firstGate, gateOn } from '../../engine/plainYard.ts';
import { deskFor, drive, driven, move, press, release } from '../drive.ts';

/** A fence of one leg of 60 ft along the x axis: six bays of 10 ft. */
const site = fence(bare, [
  [0, 0],
  [720, 0],
]);
const leg = Object.values(site.lines).flatMap((line) => legsOf(line).map(({ id }) => id))[0];
if (leg === undefined) throw new Error('expected a leg');
const selection = { kind: 'leg', line: 'line:1', id: leg } as const;

const on = (from: Site) => ({ ...driven(select, from), selection });
const bowOf = (from: Site | null): number => from?.lines['line:1']?.curved[leg] ?? 0;
const trackOf = (from: Site) => {
  const line = from.lines['line:1'];
  const own = line === undefined ? undefined : legsOf(line)[0];
  if (line === undefined || own === undefined) throw new Error('no leg');
  return legTrack(from, line, own);
};

describe('bowing a leg by its knob', () => {
  const knob = bowKnob(layOutSite(site), selection)?.at ?? { x: NaN, y: NaN };

  it('[E16] the knob stands in the bay nearest to the middle, clear of posts', () => {
    expect([300, 420]).toContain(Math.round(knob.x));
    expect(knob.y).toBeCloseTo(0, 9);
    expect(bowKnob(layOutSite(site), { kind: 'line', id: 'line:1' })).toBeNull();
  });

  it('[E16] the knob keeps off a gate while there are other bays', () => {
    const gated = gateOn(site, 0, { from: 'start', offset: inches(300) });
    const laid = layOutSite(gated);
    const at = bowKnob(laid, selection)?.at.x ?? NaN;
    const gate = laid.gates[firstGate(gated)];
    if (gate === undefined) throw new Error('expected a gate');
    const away = Math.min(Math.abs(at - gate.start.x), Math.abs(at - gate.end.x));
    expect(away).toBeGreaterThan(100);
  });

  it('[E16] dragged onto a third mark it bows the leg through that mark, not where snapping is off', () => {
    const third = { x: 301.25, y: 83.5 };
    const marked = addFeature(site, { kind: 'paving', label: '' }, [
      third,
      { x: 400, y: 900 },
      { x: 200, y: 900 },
    ]);
    const drag = (free: boolean) => {
      const at = (place: 'press' | 'move' | 'release', x: number, y: number) =>
        ({ do: place, at: { x, y }, reach: inches(6), free }) as const;
      const hand = [at('press', knob.x, 0), at('move', knob.x, 60), at('release', 302, 85)];
      return drive(select, on(marked), hand, layOutSite);
    };
    expect(nearestOnTrack(third, trackOf(drag(false).site)).off).toBeLessThan(1e-6);
    expect(nearestOnTrack(third, trackOf(drag(true).site)).off).toBeGreaterThan(0.01);
  });

  it('[E16] dragged off the chord it bows the leg through the hand, in one step and whole inches', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 400 }), (off) => {
        fc.pre(Math.abs(off) > 8);
        const bowed = drive(
          select,
          on(site),
          [press(knob.x, 1), move(knob.x, off / 2), release(knob.x, 1 + off)],
          layOutSite,
        );
        expect(bowed.labels).toEqual(['Curve leg']);
        expect(bowed.selection).toEqual(selection);
        expect(Number.isInteger(bowOf(bowed.site))).toBe(true);
        expect(Math.sign(bowOf(bowed.site))).toBe(Math.sign(off));
        // a step of 1 in of the middle ordinate
        const { off: beside } = nearestOnTrack({ x: knob.x, y: off }, trackOf(bowed.site));
        expect(beside).toBeLessThan(0.6);
        expect(openSite(saveSite(bowed.site))).toEqual({ ok: true, value: bowed.site });
      }),
      { numRuns: 40 },
    );
  });

  it('[E16] near the chord it is straight again, and Escape leaves it as it was', () => {
    const bowed = drive(
      select,
      on(site),
      [press(knob.x, 0), move(knob.x, 90), release(knob.x, 90)],
      layOutSite,
    );
    const taken = bowKnob(layOutSite(bowed.site), selection)?.at ?? { x: NaN, y: NaN };
    const back = drive(
      select,
      { ...bowed, labels: [] },
      [press(taken.x, taken.y), move(taken.x, 40), release(taken.x, 2)],
      layOutSite,
    );
    expect(back.site.lines['line:1']?.curved).toEqual({});
    const left = drive(
      select,
      on(site),
      [press(knob.x, 0), move(knob.x, 90), { do: 'leave' }],
      layOutSite,
    );
    expect([left.site, left.draft, left.labels]).toEqual([site, null, []]);
  });

  it('[E16] says the middle ordinate and the radius while it is bowed, and shows the chord', () => {
    const bowing = drive(select, on(site), [press(knob.x, 0), move(knob.x, 90)], layOutSite);
    const draft = bowing.draft ?? site;
    expect(bowOf(draft)).toBeGreaterThan(80);
    const desk = deskFor(draft, { selection, layout: layOutSite(draft) });
    expect(select.prompt(bowing.state, desk)).toMatch(
      /^Middle ordinate \d+'-\d+", radius \d+'-[\d /]+": let go to set it$/,
    );
    expect(select.preview(bowing.state, desk)).toHaveLength(2);
    const idle = deskFor(site, { selection, layout: layOutSite(site) });
    expect(select.prompt(select.idle, idle)).toBe(
      'Drag the leg to move it, or its knob to curve it',
    );
  });

  it('[E16] a hand never bows it by more than its chord, and in a metric site by whole centimetres', () => {
    const far = drive(
      select,
      on(site),
      [press(knob.x, 0), move(knob.x, 5000), release(-3000, 1)],
      layOutSite,
    );
    expect(Math.abs(bowOf(far.site))).toBeLessThanOrEqual(720);
    const metric = setLengths(site, { system: 'm' });
    const bowed = drive(
      select,
      on(metric),
      [press(knob.x, 0), move(knob.x, 91), release(knob.x, 91)],
      layOutSite,
    );
    const centimetres = bowOf(bowed.site) * 2.54;
    expect(centimetres).toBeCloseTo(Math.round(centimetres), 6);
    expect(centimetres).toBeGreaterThan(200);
  });

  it('[E16] beside the knob the leg is moved, and a tap on the knob takes what lies there', () => {
    const moved = drive(
      select,
      on(site),
      [press(knob.x + 30, 0), move(knob.x + 30, 60), release(knob.x + 30, 60)],
      layOutSite,
    );
    expect(moved.labels).toEqual(['Move leg']);
    const tapped = drive(select, on(site), [press(knob.x, 0), release(knob.x, 0)], layOutSite);
    expect([tapped.site, tapped.labels]).toEqual([site, []]);
  });
});
