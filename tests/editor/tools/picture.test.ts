import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Input } from '../../../src/editor/input.ts';
import type { PictureWay } from '../../../src/editor/pictureWay.ts';
import { picture } from '../../../src/editor/tools/picture/picture.ts';
import { select } from '../../../src/editor/tools/select/select.ts';
import { turnKnob } from '../../../src/editor/turnKnob.ts';
import { distance } from '../../../src/geometry/distance.ts';
import { pictureMap } from '../../../src/geometry/pictureMap.ts';
import { addUnderlay } from '../../../src/site/edits/addUnderlay.ts';
import { changeUnderlay } from '../../../src/site/edits/changeUnderlay.ts';
import type { UnderlayId } from '../../../src/site/ids.ts';
import { openDocument } from '../../../src/site/openDocument.ts';
import type { Site } from '../../../src/site/site.ts';
import { tiesOf } from '../../../src/site/tiesOf.ts';
import { underlayGround } from '../../../src/site/underlayGround.ts';
import { inches } from '../../../src/units/inches.ts';
import { deskFor, drive, driven, move, press, release, typed } from '../drive.ts';
import { yard } from '../yard.ts';

/** A picture of 400 × 300 px over the yard, 4 in to the pixel, its upper left corner at -400, 700. */
const laid = (site: Site, name: string, times = 1): Site =>
  addUnderlay(site, {
    label: name,
    picture: `picture:${'0'.repeat(64)}`,
    file: `${name}.jpg`,
    width: 400,
    height: 300,
    ties: [
      { u: 0, v: 0, x: -400, y: 700 },
      { u: 400, v: 300, x: -400 + 1600 * times, y: 700 - 1200 * times },
    ],
  });
const one = laid(yard, 'Plat');
const id = 'underlay:1';
const chosen = { kind: 'underlay', id } as const;

const underlayOf = (site: Site, which: UnderlayId = id) => {
  const underlay = site.underlays[which];
  if (underlay === undefined) throw new Error(`expected ${which}`);
  return underlay;
};
const mapOf = (site: Site) => pictureMap(tiesOf(underlayOf(site)));
const tap = (x: number, y: number) => [press(x, y), release(x, y)];
const begin = (way: PictureWay): Input => ({ do: 'begin', way });
const finish = { do: 'finish' } as const;
const back = { do: 'back' } as const;
const onOne = (site: Site, ...inputs: readonly Input[]) =>
  drive(picture, { ...driven(picture, site), selection: chosen }, inputs);

describe('pictures in hand', () => {
  it('[E40] a tap selects the uppermost picture, the next tap the one under it; drags move it', () => {
    const two = laid(one, 'Detail', 0.5);
    const first = drive(picture, driven(picture, two), tap(0, 500));
    // the smaller one lies on the larger
    expect(first.selection).toEqual({ kind: 'underlay', id: 'underlay:2' });
    expect(drive(picture, first, tap(0, 500)).selection).toEqual(chosen);
    const moved = onOne(one, press(0, 0), move(40, 10), move(100, -20), release(100, -20));
    expect(moved.labels).toEqual(['Move picture']);
    const corner = mapOf(moved.site).toSite({ x: 0, y: 0 });
    expect(corner).toEqual({ x: -300, y: 680 });
    expect(moved.selection).toEqual(chosen);
    expect(moved.site.marks).toBe(yard.marks);
    expect(drive(picture, driven(picture, one), tap(5000, 5000)).selection).toBeNull();
  });

  it('[E40] its knob turns it about its middle', () => {
    const knob = turnKnob(underlayOf(one));
    expect(knob).toEqual({ at: { x: 400, y: 700 }, about: { x: 400, y: 100 } });
    const turned = onOne(one, press(400, 700), move(900, 600), release(1000, 100));
    expect(turned.labels).toEqual(['Turn picture']);
    const now = turnKnob(underlayOf(turned.site));
    expect(now?.at.x).toBeCloseTo(1000, 9);
    expect(now?.at.y).toBeCloseTo(100, 9);
    expect(now?.about.x).toBeCloseTo(400, 9);
    // its size is what it was
    const [a, b] = [
      { x: 0, y: 0 },
      { x: 400, y: 0 },
    ];
    const { toSite } = mapOf(turned.site);
    expect(distance(toSite(a), toSite(b))).toBeCloseTo(1600, 9);
  });

  it('[E40] while it is dragged the drawing shows it there, and leave drops that', () => {
    const dragging = onOne(one, press(0, 0), move(100, 0));
    expect(mapOf(dragging.draft ?? one).toSite({ x: 0, y: 0 })).toEqual({ x: -300, y: 700 });
    expect(dragging.site).toBe(one);
    const left = drive(picture, dragging, [{ do: 'leave' }]);
    expect([left.draft, left.site, left.state]).toEqual([null, one, { is: 'idle' }]);
  });

  it('[E41] a locked picture is not taken, and no picture is taken by the tool that selects', () => {
    const locked = changeUnderlay(one, id, { locked: true });
    const pressed = onOne(locked, press(0, 500), move(100, 600), release(100, 600));
    expect(pressed.site).toBe(locked);
    expect(onOne(locked, press(0, 500)).say).toMatch(/^This picture is locked/);
    expect(onOne(locked, begin('distance'))).toMatchObject({
      state: { is: 'idle' },
      say: expect.stringMatching(/locked/) as string,
    });
    expect(onOne(locked, { do: 'erase' }).site).toBe(locked);
    // a smaller one that is not locked is taken through it
    const two = laid(locked, 'Detail', 2);
    expect(drive(picture, driven(picture, two), tap(0, 0)).selection).toEqual({
      kind: 'underlay',
      id: 'underlay:2',
    });
    expect(drive(select, driven(select, one), tap(700, 400)).selection).toBeNull();
  });

  it('[E41] the keys nudge and erase the selected one, but not a locked one', () => {
    const from = { ...driven(select, one), selection: chosen };
    const nudge: Input = { do: 'nudge', x: inches(12), y: inches(-12) };
    const nudged = drive(select, from, [nudge]);
    expect(nudged.labels).toEqual(['Move picture']);
    expect(mapOf(nudged.site).toSite({ x: 0, y: 0 })).toEqual({ x: -388, y: 688 });
    expect(drive(select, from, [{ do: 'erase' }]).site.underlays).toEqual({});
    const locked = changeUnderlay(one, id, { locked: true });
    const held = { ...driven(select, locked), selection: chosen };
    for (const input of [nudge, { do: 'erase' } as const]) {
      const tried = drive(select, held, [input]);
      expect([tried.site, tried.say]).toEqual([
        locked,
        'This picture is locked: unlock it on its card first',
      ]);
    }
  });

  it('[E42] two points and a typed distance give its size; points are set where the hand lifts', () => {
    const asking = onOne(
      one,
      begin('distance'),
      press(0, 0),
      move(3, 4),
      release(0, 0),
      ...tap(360, 0),
    );
    expect(picture.asked?.(asking.state, deskFor(asking.site))).toMatchObject({
      what: 'length',
      at: { x: 180, y: 0 },
      offered: 360,
      words: { form: 'Distance on the picture' },
    });
    const sized = drive(picture, asking, [typed(480), finish]);
    expect(sized.labels).toEqual(['Size picture']);
    const before = mapOf(one);
    const after = mapOf(sized.site);
    const [a, b] = [before.toPicture({ x: 0, y: 0 }), before.toPicture({ x: 360, y: 0 })];
    expect(distance(after.toSite(a), { x: 0, y: 0 })).toBeLessThan(1e-9);
    expect(distance(after.toSite(b), { x: 480, y: 0 })).toBeLessThan(1e-9);
    expect(underlayOf(sized.site).size).toBe('told');
    expect(openDocument(sized.site).ok).toBe(true);
  });

  it('[E42] what cannot be is told in one line, and the points before it stay', () => {
    const beside = onOne(one, begin('distance'), ...tap(0, 0), ...tap(5000, 0));
    expect(beside.say).toBe('This point is beside the picture: expected one on it');
    expect(beside.state).toMatchObject({ is: 'marking', seen: [{ x: 100, y: 175 }] });
    const twice = onOne(one, begin('distance'), ...tap(0, 0), ...tap(1, 1));
    expect(twice.say).toMatch(/^Two of the points are on one spot of the picture/);
    expect(twice.state).toMatchObject({ is: 'marking', seen: [{ x: 100, y: 175 }] });
    const row = onOne(
      one,
      begin('rectangle'),
      ...tap(0, 0),
      ...tap(100, 0),
      ...tap(200, 0),
      ...tap(200, -100),
    );
    expect(row.say).toMatch(/^Three of the points are in a row on the picture/);
    expect(row.state).toMatchObject({ is: 'marking' });
    const far = drive(picture, onOne(one, begin('distance'), ...tap(0, 0), ...tap(9, 0)), [
      typed(0),
    ]);
    expect(far.say).toMatch(/^Length 0": expected more than 0/);
    expect(drive(picture, driven(picture, one), [begin('distance')]).say).toMatch(
      /^Select a picture first/,
    );
  });

  it('[E43] the corners of a rectangle and its two sides straighten a picture', () => {
    const corners = [...tap(0, 400), ...tap(300, 380), ...tap(420, 100), ...tap(-60, 120)];
    const asking = onOne(one, begin('rectangle'), ...corners);
    expect(picture.asked?.(asking.state, deskFor(one))?.words.field).toBe(
      'From corner 1 to corner 2',
    );
    const second = drive(picture, asking, [typed(720), finish]);
    expect(second.labels).toEqual([]);
    expect(picture.asked?.(second.state, deskFor(one))?.words.field).toBe(
      'From corner 2 to corner 3',
    );
    const done = drive(picture, second, [typed(480), finish]);
    expect(done.labels).toEqual(['Straighten picture']);
    const was = mapOf(one);
    const { toSite } = mapOf(done.site);
    const [a, b, c, d] = [
      [0, 400],
      [300, 380],
      [420, 100],
      [-60, 120],
    ].map(([x = 0, y = 0]) => toSite(was.toPicture({ x, y })));
    if (!a || !b || !c || !d) throw new Error('expected four corners');
    const sides = [distance(a, b), distance(b, c), distance(c, d), distance(d, a), distance(a, c)];
    const wanted = [720, 480, 720, 480, Math.hypot(720, 480)];
    sides.forEach((side, n) => expect(side).toBeCloseTo(wanted[n] ?? NaN, 6));
    expect(a.x).toBeCloseTo(0, 6);
    expect(a.y).toBeCloseTo(400, 6);
    expect(openDocument(done.site).ok).toBe(true);
  });

  it('[E43] two points laid on two marks turn, move and size it; the hand is drawn to the marks', () => {
    const done = onOne(
      one,
      begin('two places'),
      ...tap(100, 100),
      ...tap(3, -3),
      ...tap(300, 500),
      ...tap(362, 238),
    );
    expect(done.labels).toEqual(['Lay picture']);
    const was = mapOf(one);
    const { toSite } = mapOf(done.site);
    const [a, b] = [
      toSite(was.toPicture({ x: 100, y: 100 })),
      toSite(was.toPicture({ x: 300, y: 500 })),
    ];
    expect(distance(a, { x: 0, y: 0 })).toBeLessThan(1e-9);
    expect(distance(b, { x: 360, y: 240 })).toBeLessThan(1e-9);
  });

  it('[E43] four points laid on the four corners of the house straighten it', () => {
    const seen = [
      [-200, 300],
      [200, 320],
      [500, 0],
      [-300, -50],
    ] as const;
    const house = [
      [0, 240],
      [360, 240],
      [360, 0],
      [0, 0],
    ] as const;
    const taps = seen.flatMap(([x, y], n) => [
      ...tap(x, y),
      ...tap(house[n]?.[0] ?? 0, house[n]?.[1] ?? 0),
    ]);
    const done = onOne(one, begin('four places'), ...taps);
    expect(done.labels).toEqual(['Straighten picture']);
    const was = mapOf(one);
    seen.forEach(([x, y], n) => {
      const at = mapOf(done.site).toSite(was.toPicture({ x, y }));
      expect(distance(at, { x: house[n]?.[0] ?? 0, y: house[n]?.[1] ?? 0 })).toBeLessThan(1e-6);
    });
    // places that go round the other way are refused, with the last pair taken off
    const wrong = seen.flatMap(([x, y], n) => [
      ...tap(x, y),
      ...tap(house[3 - n]?.[0] ?? 0, house[3 - n]?.[1] ?? 0),
    ]);
    const refused = onOne(one, begin('four places'), ...wrong);
    expect(refused.say).toMatch(/do not go round the same way/);
    expect(refused.state).toMatchObject({ is: 'marking' });
    expect(refused.site).toBe(one);
  });

  it('[E44] back takes off the last point or place, then all; erasing while marking is back', () => {
    const marking = onOne(one, begin('four places'), ...tap(0, 0), ...tap(0, 240), ...tap(100, 0));
    expect(marking.state).toMatchObject({ seen: [{}, {}], shown: [{}] });
    expect(picture.steps?.(marking.state, deskFor(one))).toEqual({
      set: 3,
      of: 8,
      form: 'Points and their places',
    });
    const less = drive(picture, marking, [back]);
    expect(less.state).toMatchObject({ seen: [{}], shown: [{}] });
    const place = drive(picture, less, [{ do: 'erase' }]);
    expect(place.state).toMatchObject({ seen: [{}], shown: [] });
    expect(drive(picture, place, [back]).state).toMatchObject({ is: 'marking', seen: [] });
    expect(drive(picture, place, [back, back]).state).toEqual({ is: 'idle' });
    const asking = onOne(one, begin('distance'), ...tap(0, 0), ...tap(90, 0));
    expect(drive(picture, asking, [back]).state).toMatchObject({ is: 'marking', seen: [{}] });
  });

  it('[E44] whatever the hand does nothing throws, and every site opens', () => {
    const spot = fc.record({
      x: fc.integer({ min: -900, max: 1500 }),
      y: fc.integer({ min: -900, max: 900 }),
    });
    const ways = ['distance', 'rectangle', 'two places', 'four places'] as const;
    const input: fc.Arbitrary<Input> = fc.oneof(
      { weight: 4, arbitrary: spot.map(({ x, y }) => press(x, y)) },
      { weight: 4, arbitrary: spot.map(({ x, y }) => release(x, y)) },
      { weight: 2, arbitrary: spot.map(({ x, y }) => move(x, y)) },
      fc.constantFrom(...ways).map(begin),
      fc.integer({ min: -5, max: 2000 }).map((length) => typed(length)),
      fc.constantFrom<Input>(finish, back, { do: 'leave' }, { do: 'erase' }, { do: 'close' }),
    );
    fc.assert(
      fc.property(fc.array(input, { maxLength: 40 }), (inputs) => {
        const start = { ...driven(picture, laid(one, 'Detail', 0.6)), selection: chosen };
        let so: typeof start = start;
        for (const next of inputs) {
          try {
            so = drive(picture, so, [next]) as typeof start;
          } catch (error) {
            // an edit that refuses is told by the machine in its one line
            expect(error).toBeInstanceOf(RangeError);
          }
          const desk = deskFor(so.draft ?? so.site, { selection: so.selection });
          picture.preview(so.state, desk);
          expect(picture.prompt(so.state, desk)).not.toBe('');
          picture.asked?.(so.state, desk);
          expect(openDocument(so.site).ok).toBe(true);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('[E40] turned and straightened pictures keep their knob on their edge', () => {
    const turned = onOne(one, press(400, 700), move(900, 600), release(1000, 100)).site;
    const knob = turnKnob(underlayOf(turned));
    const ground = underlayGround(underlayOf(turned));
    expect(ground).toHaveLength(4);
    expect(distance(knob?.at ?? { x: 0, y: 0 }, { x: 1000, y: 100 })).toBeLessThan(1e-6);
  });
});
