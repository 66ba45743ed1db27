import { addMark } from '../../site/edits/addMark.ts';
import { freshName } from '../../site/freshName.ts';
import { nextId } from '../../site/nextId.ts';
import type { Site } from '../../site/site.ts';
import { ghostMark } from '../ghostPiece.ts';
import { footingIn } from '../ground.ts';
import { pointerOf, type Pointer } from '../pointer.ts';
import { snap, type Snap } from '../snap.ts';
import { snapGuides } from '../snapGuides.ts';
import type { Answer, Desk, Tool } from '../tool.ts';
import type { Input } from '../input.ts';
import { untyped } from '../typed.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 *   idle --press--> aiming --move--> aiming --release--> idle, a mark in the document
 *   aiming --release on a mark--> idle, that mark selected
 *   aiming --leave--> idle
 *
 * It is set where the hand lifts, so that a finger can be drawn to what it covers.
 */
export interface PlaceMarkState {
  readonly is: 'idle' | 'aiming';
  readonly pointer: Pointer;
}

type Hand = NonNullable<Pointer>;

const idle: PlaceMarkState = { is: 'idle', pointer: null };

/** Where a mark would stand; it leaves the leg or side that it is drawn onto as that is. */
const meant = (site: Site, pointer: Hand): Snap =>
  snap(site, { ...pointer, from: null, last: null, typed: untyped, except: [], also: [] });

const set = (pointer: Hand, { site }: Desk): Answer<PlaceMarkState> => {
  const { point } = meant(site, pointer);
  const there = footingIn({ site, except: [] }, point);
  if (there?.kind === 'mark') return { state: idle, select: there };
  const names = Object.values(site.marks).map(({ label }) => label);
  return {
    state: idle,
    commit: { site: addMark(site, point, freshName('M', names)), label: phrase`Set mark` },
    select: { kind: 'mark', id: nextId(site, 'mark') },
  };
};

const on = (before: PlaceMarkState, input: Input, desk: Desk): Answer<PlaceMarkState> => {
  const state = { ...before, pointer: pointerOf(input, before.pointer) };
  switch (input.do) {
    case 'press':
      return { state: { ...state, is: 'aiming' } };
    case 'release':
      if (state.is === 'idle' || state.pointer === null) return { state };
      return set(state.pointer, desk);
    case 'leave':
    case 'back':
      return { state: idle };
    default:
      return { state };
  }
};

/** Sets a mark on which nothing stands: a property pin, a stake to tape from. */
export const placeMark: Tool<PlaceMarkState> = {
  idle,
  on,
  preview: ({ pointer }, { site }) => {
    if (pointer === null) return [];
    const found = meant(site, pointer);
    return [...snapGuides(found), ghostMark(found.point)];
  },
  prompt: (state, { site }) => {
    const there = state.pointer !== null && meant(site, state.pointer).on?.kind === 'mark';
    if (state.is === 'aiming')
      return there ? phrase`Let go to select this mark` : phrase`Let go to set a mark`;
    return phrase`Tap where the mark is: a pin, a stake`;
  },
  rest: () => idle,
};
