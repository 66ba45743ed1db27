import { describe, expect, it } from 'vitest';
import { drawPlan } from '../../../src/drawing/plan/drawPlan.ts';
import { placeGate } from '../../../src/editor/tools/placeGate.ts';
import type { PlaceGateState } from '../../../src/editor/tools/placeGate.ts';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import { moveMark } from '../../../src/site/edits/moveMark.ts';
import type { Site } from '../../../src/site/site.ts';
import { namedSite } from '../../store/namedSite.ts';
import { samplePlans } from '../../store/samplePlans.ts';
import { deskFor, drive, driven, move, press } from '../drive.ts';
import type { Driven } from '../drive.ts';
import { gatedYard } from '../gatedYard.ts';
import { yard } from '../yard.ts';

const aimed = (site: Site, x: number, y: number) => {
  const so = drive(placeGate, driven(placeGate, site), [move(x, y)]);
  const draft = so.draft ?? site;
  return { ...so, desk: deskFor(draft, { layout: layOutSite(draft) }) };
};

const shown = ({ state, desk }: ReturnType<typeof aimed>) => placeGate.preview(state, desk);
const anchorIn = ({ site }: Driven<PlaceGateState>) => site.gates['gate:1']?.anchor;

describe('placeGate', () => {
  it('[E11] idle, aiming, idle: the ghost is a draft, a press commits it', () => {
    const aiming = drive(placeGate, driven(placeGate, yard), [move(600, 30)]);
    expect(aiming.state).toEqual({ is: 'aiming', ghost: 'gate:1' });
    expect([aiming.site, aiming.labels]).toEqual([yard, []]);
    expect(aiming.draft?.gates['gate:1']?.anchor).toEqual({ from: 'middle', offset: 0 });
    const set = drive(placeGate, aiming, [move(450, 20), press(450, 5)]);
    expect([set.state.is, set.labels, set.draft]).toEqual(['idle', ['Place gate'], null]);
    expect(set.selection).toEqual({ kind: 'gate', id: 'gate:1' });
    expect(anchorIn(set)).toEqual({ from: 'start', offset: 67 });
    expect(Object.keys(set.site.hardware)).toEqual(['hardware:latch', 'hardware:hinge']);
    expect(openDocument(set.site).ok).toBe(true);
  });

  it('[E11] shows the opening of the hardware and the posts at their true size', () => {
    const aiming = aimed(yard, 600, 3);
    // 42 in leaf + 1 in hinge + 1-1/2 in latch
    expect(placeGate.prompt(aiming.state, aiming.desk)).toBe(
      `Opening 3'-8 1/2": tap to set the gate`,
    );
    const drawn = shown(aiming);
    const circles = drawn.flatMap((one) =>
      one.kind === 'circle' ? [{ x: one.centre.x, d: one.radius * 2, pen: one.pen }] : [],
    );
    const posts = circles.filter(({ d }) => d === 2.375);
    expect(posts.map(({ x }) => x)).toEqual([600 - 46.875 / 2, 600 + 46.875 / 2]);
    const gate = aiming.desk.layout.gates['gate:1'];
    const holes = [gate?.posts?.start, gate?.posts?.end].map(
      (id) => id && aiming.desk.layout.posts.get(id)?.hole.diameter,
    );
    expect(circles.filter(({ d }) => d !== 2.375).map(({ d }) => d)).toEqual(holes);
    expect(circles.map(({ pen }) => pen)).toEqual(['ghost', 'ghost', 'ghost', 'ghost']);
    const plan = drawPlan(aiming.desk.site, aiming.desk.layout);
    const texts = [...plan, ...drawn].flatMap((one) => (one.kind === 'text' ? [one.text] : []));
    expect(texts.filter((text) => text.includes('opening'))).toEqual([
      expect.stringMatching(/\nopening 3'-8 1\/2"$/),
    ]);
  });

  it('[E11] turns to the stop ink where it does not fit, and says by how much', () => {
    const short = moveMark(yard, 'mark:fence2', { x: 400, y: 0 });
    const aiming = aimed(short, 380, 3);
    const why = placeGate.prompt(aiming.state, aiming.desk);
    expect(why).toMatch(/opening 3'-8 1\/2".* \d.*" wider/);
    const inks = shown(aiming).flatMap((one) =>
      one.kind === 'circle' || one.kind === 'text' ? [one.ink] : [],
    );
    expect(new Set(inks)).toEqual(new Set(['stop']));
    const over = aimed(gatedYard({ from: 'middle', offset: 0 }), 610, 3);
    expect(placeGate.prompt(over.state, over.desk)).toMatch(/over/);
  });

  it('[E11] what is only to be settled does not stop it', () => {
    const [leaf] = samplePlans.gate.leaves;
    if (leaf === undefined) throw new Error('expected a leaf in the plan');
    const gate = { ...samplePlans.gate, leaves: [{ ...leaf, from: 'catalogue' as const }] };
    const desk = deskFor(yard, { plans: { ...samplePlans, gate } });
    const { state, draft } = placeGate.on(placeGate.idle, move(600, 3), desk);
    const layout = layOutSite(draft ?? yard);
    expect(layout.flags.map(({ level, place }) => [level, place.kind])).toContainEqual([
      'settle',
      'gate',
    ]);
    expect(placeGate.prompt(state, { ...desk, site: draft ?? yard, layout })).toBe(
      `Opening 3'-8 1/2": tap to set the gate`,
    );
  });

  it('[E11] a site that carries the hardware keeps its own', () => {
    const hinge = samplePlans.gate.leaves[0]?.hinge;
    if (hinge === undefined) throw new Error('expected a leaf in the plan');
    const measured = { ...hinge.hardware, label: 'Measured here' };
    const site: Site = { ...yard, hardware: { [hinge.id]: measured } };
    const set = drive(placeGate, driven(placeGate, site), [press(600, 0)]);
    expect(set.site.hardware[hinge.id]).toBe(measured);
  });

  it('[E11] far from fence there is no ghost, and a press says so', () => {
    const away = drive(placeGate, driven(placeGate, yard), [move(600, 3), move(600, -300)]);
    expect([away.state.is, away.draft]).toEqual(['idle', null]);
    const pressed = drive(placeGate, away, [press(600, -300)]);
    expect(pressed.say).toBe('No fence here: tap on the leg that the gate goes into');
    const none = drive(placeGate, driven(placeGate, namedSite('Empty')), [move(0, 0), press(0, 0)]);
    expect(none.labels).toEqual([]);
    const left = drive(placeGate, driven(placeGate, yard), [move(600, 3), { do: 'leave' }]);
    expect([left.state.is, left.draft]).toEqual(['idle', null]);
  });
});
