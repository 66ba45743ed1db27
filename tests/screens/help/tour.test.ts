import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pointsAt, tourPoints } from '../../../src/screens/help/tour/pointsAt.ts';
import { seenOf } from '../../../src/screens/help/tour/seenOf.ts';
import { stepDone } from '../../../src/screens/help/tour/stepDone.ts';
import { after, before, begun, broughtOn } from '../../../src/screens/help/tour/tourMoves.ts';
import type { TourNow } from '../../../src/screens/help/tour/tourNow.ts';
import {
  readTour,
  tourSteps,
  withLook,
  type Tour,
  type TourStep,
} from '../../../src/store/tour.ts';
import { openSite } from '../../../src/site/openSite.ts';
import { setHook } from '../../../src/site/edits/setHook.ts';
import { removeGate } from '../../../src/site/edits/removeGate.ts';
import { legsOf } from '../../../src/site/legsOf.ts';
import type { FenceLine } from '../../../src/site/fenceLine.ts';
import type { GateId, LineId, MarkId } from '../../../src/site/ids.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';

const root = join(import.meta.dirname, '../../..');
const opened = openSite(readFileSync(join(root, 'sample-sites/back-yard.site.json'), 'utf8'));
if (!opened.ok) throw new Error(opened.reason);
const yard = opened.value;
const empty = seenOf(namedSite('Empty'));

const idle: TourNow = {
  seen: empty,
  screen: 'yard',
  tool: 'select',
  selection: null,
  drawing: false,
  flags: 0,
};
const at = (step: TourStep, more: Partial<Tour> = {}): Tour => ({
  at: step,
  since: empty,
  looks: [],
  ...more,
});

/** What does a step, and what is near to it and does not. */
const deeds: Readonly<
  Record<
    TourStep,
    {
      readonly done: [Partial<TourNow>, Partial<Tour>];
      readonly not: [Partial<TourNow>, Partial<Tour>];
    }
  >
> = {
  fence: { done: [{ tool: 'fence' }, {}], not: [{ tool: 'gate' }, {}] },
  start: { done: [{ tool: 'fence', drawing: true }, {}], not: [{ tool: 'fence' }, {}] },
  length: {
    done: [{ drawing: true, seen: { ...empty, taped: 1 } }, {}],
    not: [{ drawing: true, seen: { ...empty, taped: 1 } }, { since: { ...empty, taped: 1 } }],
  },
  finish: { done: [{ drawing: false }, {}], not: [{ drawing: true }, {}] },
  gate: {
    done: [{ seen: { ...empty, gates: 1 } }, {}],
    not: [{ tool: 'gate', seen: { ...empty, gates: 1 } }, { since: { ...empty, gates: 1 } }],
  },
  opening: { done: [{}, { looks: ['opening'] }], not: [{}, { looks: ['flag'] }] },
  flag: { done: [{ flags: 2 }, { looks: ['flag'] }], not: [{ flags: 2 }, {}] },
  tape: {
    done: [
      { seen: { ...empty, hooks: 'line:1 end' } },
      { since: { ...empty, hooks: 'line:1 start' } },
    ],
    not: [
      { seen: { ...empty, hooks: 'line:1 end' } },
      { since: { ...empty, hooks: 'line:1 end' } },
    ],
  },
  sheet: { done: [{ screen: 'sheet' }, { looks: ['sheet'] }], not: [{ screen: 'sheet' }, {}] },
};

describe('a step of the tour', () => {
  it.each(tourSteps)('is done by its own deed and by nothing near to it: %s', (step) => {
    const { done, not } = deeds[step];
    expect(stepDone(step, { ...idle, ...done[0] }, at(step, done[1]))).toBe(true);
    expect(stepDone(step, { ...idle, ...not[0] }, at(step, not[1]))).toBe(false);
  });

  it('asks for no flag where none stands', () => {
    expect(stepDone('flag', idle, at('flag'))).toBe(true);
  });

  it('points at a place that the page has an outline for, on any screen and with any tool', () => {
    const css = readFileSync(join(root, 'src/screens/help/tour/tour.css'), 'utf8');
    for (const point of tourPoints)
      expect(css).toContain(`[data-pointed='${point}'] [data-point='${point}']`);
    const pointed = tourSteps.flatMap((step) =>
      (['yard', 'openings', 'sheet'] as const).flatMap((screen) =>
        (['select', 'fence', 'gate'] as const).flatMap((tool) =>
          [true, false].flatMap((drawing) =>
            [null, { kind: 'gate', id: 'gate:1' } as const].flatMap((selection) =>
              pointsAt(step, { ...idle, screen, tool, drawing, selection }),
            ),
          ),
        ),
      ),
    );
    expect(tourPoints.filter((point) => !pointed.includes(point))).toEqual([]);
  });

  it('leads back to the yard for what is done there', () => {
    expect(pointsAt('tape', { ...idle, screen: 'load' })).toEqual(['yard']);
    expect(pointsAt('sheet', { ...idle, screen: 'load' })).toEqual(['crew sheet']);
    expect(pointsAt('sheet', { ...idle, screen: 'sheet' })).toEqual(['pdf']);
  });
});

describe('what the tour sees of a yard', () => {
  const [line] = Object.entries(yard.lines)[0] as [LineId, FenceLine];
  const seen = seenOf(yard);

  it('counts gates, and legs whose length was typed, seen from either end', () => {
    const [gate] = Object.keys(yard.gates) as GateId[];
    expect(seenOf(removeGate(yard, gate ?? 'gate:')).gates).toBe(seen.gates - 1);
    const leg = Object.values<FenceLine>(yard.lines).flatMap(legsOf)[0];
    if (leg === undefined) throw new Error('expected a leg');
    const tape = { kind: 'tape', length: inches(12), trust: null, label: '' } as const;
    const taped = (from: MarkId, to: MarkId) =>
      seenOf({ ...yard, observations: { 'observation:1': { ...tape, from, to } } }).taped;
    expect(taped(leg.start, leg.end)).toBe(1);
    expect(taped(leg.end, leg.start)).toBe(1);
    expect(taped(leg.start, leg.start)).toBe(0);
  });

  it('tells a tape that was hooked at the other end from all others', () => {
    const hook = yard.lines[line]?.hook === 'start' ? 'end' : 'start';
    expect(seenOf(setHook(yard, line, hook)).hooks).not.toBe(seen.hooks);
    expect(seenOf(structuredClone(yard)).hooks).toBe(seen.hooks);
  });
});

describe('the tour', () => {
  it('goes on from step to step by what is done, over several at once, and not by itself', () => {
    const tour = begun(empty);
    expect(broughtOn(tour, idle)).toBe(tour);
    const drawing = { ...idle, tool: 'fence', drawing: true } as const;
    expect(broughtOn(tour, drawing).at).toBe('length');
    const typed = { ...drawing, seen: { ...empty, taped: 1 } };
    const next = broughtOn(broughtOn(tour, drawing), typed);
    expect(next).toEqual(at('finish', { since: typed.seen }));
  });

  it('goes back and asks for that step again, whatever there is', () => {
    const now = { ...idle, seen: { ...empty, gates: 3 } };
    const back = before(at('opening', { looks: ['opening'] }), now.seen);
    expect(back).toEqual(at('gate', { since: now.seen }));
    expect(broughtOn(back, now)).toBe(back);
    expect(before(begun(empty), empty)).toEqual(begun(empty));
    expect(before({ ...begun(empty), at: 'end' }, empty).at).toBe(tourSteps.at(-1));
  });

  it('is skipped through to its end, and no further', () => {
    let tour = begun(empty);
    for (const step of tourSteps) {
      expect(tour.at).toBe(step);
      tour = after(tour, empty);
    }
    expect(tour.at).toBe('end');
    expect(after(tour, empty)).toBe(tour);
    expect(broughtOn(tour, idle)).toBe(tour);
  });

  it('remembers a look once, and none where no tour is taken', () => {
    expect(withLook(null, 'flag')).toBeNull();
    const looked = withLook(at('flag'), 'flag');
    expect(looked?.looks).toEqual(['flag']);
    expect(withLook(looked, 'flag')).toBe(looked);
  });
});

describe('a tour that was kept', () => {
  it('is read as it was, and not at all in another form', () => {
    const tour = at('tape', { since: seenOf(yard), looks: ['flag'] });
    expect(readTour(JSON.parse(JSON.stringify(tour)))).toEqual(tour);
    for (const other of [
      null,
      7,
      {},
      { ...tour, at: 'elsewhere' },
      { ...tour, since: { taped: 'x' } },
    ])
      expect(readTour(other)).toBeNull();
    expect(readTour({ ...tour, looks: ['else', 'flag'] })?.looks).toEqual(['flag']);
    expect(readTour({ ...tour, looks: 3 })?.looks).toEqual([]);
  });
});
