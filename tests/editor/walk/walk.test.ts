import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bestRadius } from '../../../src/engine/walk/meanPosition.ts';
import type { Position } from '../../../src/engine/walk/readPosition.ts';
import {
  isWatching,
  placeOfWalk,
  walked,
  type WalkEvent,
  type WalkState,
} from '../../../src/editor/walk/walk.ts';
import { inches } from '../../../src/units/inches.ts';

const off: WalkState = { is: 'off', why: null };
const after = (...events: readonly WalkEvent[]): WalkState => events.reduce(walked, off);
const deed = (what: 'start' | 'stop' | 'hide' | 'show' | 'gather' | 'ungather'): WalkEvent => ({
  do: what,
});

/** So many metres north of a place in 40 degrees north, within 8 m. */
const place = (north: number): Position => ({
  latitude: 40 + north / 111_195,
  longitude: -90,
  radius: inches(8 / 0.0254),
});
const position = (north: number): WalkEvent => ({ do: 'position', position: place(north) });

describe('a walk', () => {
  it('[E22] asks for positions only once it is started, waits for the first, and goes along', () => {
    expect(isWatching(off)).toBe(false);
    expect(after(position(0))).toEqual(off);
    expect(after(deed('start'))).toEqual({ is: 'waiting', lack: null });
    expect(after(deed('start'), position(0), position(30))).toEqual({
      is: 'here',
      now: place(30),
      gathered: null,
      told: null,
    });
  });

  it('[E22] ends where it is refused or cannot be, and says why until it is started again', () => {
    for (const why of ['denied', 'insecure', 'none', 'unloaded'] as const) {
      const ended = after(deed('start'), position(0), { do: 'end', why });
      expect(ended).toEqual({ is: 'off', why });
      expect(walked(ended, deed('start'))).toEqual({ is: 'waiting', lack: null });
    }
    expect(after(deed('start'), position(0), deed('stop'))).toEqual(off);
  });

  it('[E22] keeps on asking while there is no position, and keeps the last one with a word', () => {
    const timeout: WalkEvent = { do: 'lack', lack: 'timeout' };
    const waiting = after(deed('start'), timeout);
    expect([waiting, isWatching(waiting)]).toEqual([{ is: 'waiting', lack: 'timeout' }, true]);
    const here = after(deed('start'), position(0), timeout);
    expect(here).toMatchObject({ is: 'here', now: place(0), told: 'timeout' });
    expect(walked(here, position(5))).toMatchObject({ now: place(5), told: null });
  });

  it('[E22] pauses while the page is hidden and waits for a new position after', () => {
    const hidden = after(deed('start'), position(0), deed('gather'), deed('hide'));
    expect([hidden, isWatching(hidden), placeOfWalk(hidden)]).toEqual([
      { is: 'paused' },
      false,
      null,
    ]);
    expect(walked(hidden, position(1))).toBe(hidden);
    expect(walked(hidden, deed('show'))).toEqual({ is: 'waiting', lack: null });
    expect(walked(off, deed('show'))).toBe(off);
  });

  it('[E23] gathers the positions of one place, and begins anew where one lies farther off than both can be out', () => {
    const still = after(deed('start'), position(0), deed('gather'), position(3), position(-3));
    expect(still).toMatchObject({ gathered: [place(0), place(3), place(-3)], told: null });
    expect(placeOfWalk(still)?.latitude).toBeCloseTo(40, 9);
    expect(placeOfWalk(still)?.radius).toBe(place(0).radius);
    // 17 m off, and 8 m each
    const moved = walked(still, position(17));
    expect(moved).toMatchObject({ gathered: [place(17)], told: 'moved' });
    expect(walked(walked(moved, position(17)), deed('ungather'))).toMatchObject({
      now: place(17),
      gathered: null,
    });
  });

  it('[E23] drops a mark where it is, told no better than 4.9 m', () => {
    const exact = { ...place(2), radius: inches(1) };
    const here = after(deed('start'), { do: 'position', position: exact });
    expect(placeOfWalk(here)).toEqual({ ...exact, radius: bestRadius });
    expect(placeOfWalk(after(deed('start')))).toBeNull();
  });

  it('[E22] takes any event in any state', () => {
    const event = fc.oneof(
      fc.constantFrom(
        ...(['start', 'stop', 'hide', 'show', 'gather', 'ungather'] as const).map(deed),
      ),
      fc.constantFrom<WalkEvent>({ do: 'end', why: 'denied' }, { do: 'lack', lack: 'unavailable' }),
      fc.double({ min: -100, max: 100, noNaN: true }).map(position),
    );
    fc.assert(
      fc.property(fc.array(event), (events) => {
        const state = after(...events);
        expect(placeOfWalk(state) !== null).toBe(state.is === 'here');
        if (state.is === 'here') expect(state.gathered?.length).not.toBe(0);
      }),
    );
  });
});
