import type { ScreenPoint } from '../geometry/point.ts';

/** What the browser reports of one pointer, reduced to what matters here. Points in CSS pixels. */
export interface Signal {
  /** `rest` is no event of its own: a finger has been down for `restTime` and not moved off. */
  readonly on: 'down' | 'move' | 'up' | 'lost' | 'rest';
  readonly id: number;
  readonly kind: 'mouse' | 'touch' | 'pen';
  readonly at: ScreenPoint;
  /**
   * `pan` for the middle button, the space bar held, or the pan tool; `tap` where there is nothing
   * to drag, so that a tap draws and a drag pans.
   */
  readonly means: 'draw' | 'pan' | 'tap';
}

/** What a hand does on the pad, still in CSS pixels. */
export type Deed =
  | { readonly do: 'press' | 'move' | 'release'; readonly at: ScreenPoint }
  | { readonly do: 'pan'; readonly x: number; readonly y: number }
  /** Zooms `times` about a point that the fingers keep in hold. */
  | { readonly do: 'pinch'; readonly about: ScreenPoint; readonly times: number }
  /** A finger that rests, or the other button of a mouse: asks for what lies there. */
  | { readonly do: 'hold'; readonly at: ScreenPoint }
  | { readonly do: 'leave' };

interface Finger {
  readonly id: number;
  readonly at: ScreenPoint;
}

/**
 * The pointers on the pad as one machine:
 *
 *   empty --finger--> waiting --moves or lifts--> drawing --lifts--> empty
 *   waiting --second finger--> pinching --one lifts--> panning --lifts--> empty
 *   empty --mouse, pen--> drawing;  empty --middle, space--> panning
 *   empty --where there is nothing to drag--> waiting --moves--> panning
 *   waiting --a finger rests--> resting --lifts--> empty
 *
 * A finger waits, so that the first of two fingers never draws. A pen that comes down takes over
 * from fingers, and fingers that come down beside it are the palm.
 */
export type Hand =
  | { readonly is: 'empty' }
  | ({ readonly is: 'waiting'; readonly means: Signal['means'] } & Finger)
  | ({ readonly is: 'drawing'; readonly kind: Signal['kind'] } & Finger)
  | ({ readonly is: 'panning' } & Finger)
  | ({ readonly is: 'resting' } & Finger)
  | { readonly is: 'pinching'; readonly first: Finger; readonly second: Finger };

export interface Handled {
  readonly hand: Hand;
  readonly deeds: readonly Deed[];
}

/** The hand with nothing on the pad. */
export const emptyHand: Hand = { is: 'empty' };

/** A finger that is down for so long and stays where it is rests, milliseconds. Ours. */
export const restTime = 500;

/** For so long after a pen was on or over the pad a finger may be the hand that holds it, milliseconds. Ours. */
const penTime = 3000;

/**
 * What a pointer is there for when a pen was heard of `sincePen` milliseconds ago (Infinity: never): a
 * finger beside a pen is the palm or moves the paper, and draws nothing.
 */
export const meansBesidePen = (
  means: Signal['means'],
  kind: Signal['kind'],
  sincePen: number,
): Signal['means'] => (kind === 'touch' && sincePen < penTime ? 'pan' : means);

/** How far a finger may roll, in CSS pixels, and still be tapping. */
const roll = 8;

const done = (hand: Hand, ...deeds: readonly Deed[]): Handled => ({ hand, deeds });
const apart = (a: ScreenPoint, b: ScreenPoint): number => Math.hypot(a.x - b.x, a.y - b.y);
const between = (a: ScreenPoint, b: ScreenPoint): ScreenPoint => ({
  x: (a.x + b.x) / 2,
  y: (a.y + b.y) / 2,
});

const down = (hand: Hand, { id, kind, at, means }: Signal): Handled => {
  if (means === 'pan' && hand.is === 'empty') return done({ is: 'panning', id, at });
  if (means === 'tap' && hand.is === 'empty') return done({ is: 'waiting', means, id, at });
  if (kind !== 'touch') {
    if (hand.is === 'drawing' && hand.kind !== 'touch') return done(hand);
    const press: Deed = { do: 'press', at };
    const drawing: Hand = { is: 'drawing', id, kind, at };
    return hand.is === 'drawing' ? done(drawing, { do: 'leave' }, press) : done(drawing, press);
  }
  if (hand.is === 'empty') return done({ is: 'waiting', means, id, at });
  if (hand.is === 'waiting' || hand.is === 'panning' || hand.is === 'resting') {
    return done({ is: 'pinching', first: { id: hand.id, at: hand.at }, second: { id, at } });
  }
  return done(hand);
};

const pinch = (hand: Extract<Hand, { is: 'pinching' }>, { id, at }: Signal): Handled => {
  const first = id === hand.first.id ? { id, at } : hand.first;
  const second = id === hand.second.id ? { id, at } : hand.second;
  const [was, about] = [between(hand.first.at, hand.second.at), between(first.at, second.at)];
  const [before, after] = [apart(hand.first.at, hand.second.at), apart(first.at, second.at)];
  return done(
    { is: 'pinching', first, second },
    { do: 'pan', x: about.x - was.x, y: about.y - was.y },
    { do: 'pinch', about, times: before < 1 || after < 1 ? 1 : after / before },
  );
};

const move = (hand: Hand, signal: Signal): Handled => {
  const { id, kind, at } = signal;
  if (hand.is === 'empty')
    return done(hand, ...(kind === 'touch' ? [] : [{ do: 'move', at } as const]));
  if (hand.is === 'pinching') return pinch(hand, signal);
  if (hand.id !== id) return done(hand);
  if (hand.is === 'panning') {
    return done({ ...hand, at }, { do: 'pan', x: at.x - hand.at.x, y: at.y - hand.at.y });
  }
  if (hand.is === 'drawing') return done({ ...hand, at }, { do: 'move', at });
  if (hand.is === 'resting') return done(hand);
  if (apart(hand.at, at) <= roll) return done(hand);
  if (hand.means === 'tap') {
    return done({ is: 'panning', id, at }, { do: 'pan', x: at.x - hand.at.x, y: at.y - hand.at.y });
  }
  return done({ is: 'drawing', id, kind, at }, { do: 'press', at: hand.at }, { do: 'move', at });
};

const up = (hand: Hand, { id, at, on }: Signal): Handled => {
  if (hand.is === 'empty') return done(hand);
  if (hand.is === 'pinching') {
    if (id !== hand.first.id && id !== hand.second.id) return done(hand);
    const left = id === hand.first.id ? hand.second : hand.first;
    return done({ is: 'panning', ...left });
  }
  if (hand.id !== id) return done(hand);
  if (hand.is === 'panning' || hand.is === 'resting') return done(emptyHand);
  if (on === 'lost')
    return done(emptyHand, ...(hand.is === 'drawing' ? [{ do: 'leave' } as const] : []));
  if (hand.is === 'drawing') return done(emptyHand, { do: 'release', at });
  return done(emptyHand, { do: 'press', at: hand.at }, { do: 'release', at: hand.at });
};

const rest = (hand: Hand, { id }: Signal): Handled =>
  hand.is === 'waiting' && hand.id === id
    ? done({ is: 'resting', id, at: hand.at }, { do: 'hold', at: hand.at })
    : done(hand);

/** One signal in: how the hand is then, and what it did. */
export const handle = (hand: Hand, signal: Signal): Handled => {
  if (signal.on === 'down') return down(hand, signal);
  if (signal.on === 'rest') return rest(hand, signal);
  return signal.on === 'move' ? move(hand, signal) : up(hand, signal);
};
