import { meanPosition } from '../../engine/walk/meanPosition.ts';
import type { Position } from '../../engine/walk/readPosition.ts';
import { placesApart } from '../../geometry/placesApart.ts';

/** Why there is no walk: refused, no secure page, no position in this browser, or its code did not come. */
export type WalkEnd = 'denied' | 'insecure' | 'none' | 'unloaded';
/** Why there is no newer position for now. */
export type WalkLack = 'unavailable' | 'timeout' | 'unreadable';

/**
 *   off --start--> waiting --position--> here --position--> here
 *   waiting, here --lack--> the same, which says so
 *   waiting, here --hide--> paused --show--> waiting
 *   here --gather--> here, gathering --ungather--> here
 *   any --end, stop--> off
 *
 * While it gathers, positions are those of one place: one that lies too far off begins a new place.
 */
export type WalkState =
  | { readonly is: 'off'; readonly why: WalkEnd | null }
  | { readonly is: 'waiting'; readonly lack: WalkLack | null }
  | {
      readonly is: 'here';
      readonly now: Position;
      /** The positions of one place, oldest first; null while none are gathered. */
      readonly gathered: readonly Position[] | null;
      readonly told: WalkLack | 'moved' | null;
    }
  | { readonly is: 'paused' };

export type WalkEvent =
  | { readonly do: 'start' | 'stop' | 'hide' | 'show' | 'gather' | 'ungather' }
  | { readonly do: 'end'; readonly why: WalkEnd }
  | { readonly do: 'lack'; readonly lack: WalkLack }
  | { readonly do: 'position'; readonly position: Position };

type Here = Extract<WalkState, { readonly is: 'here' }>;

/** The most positions that are kept of one place: ten minutes of one a second. */
const mostGathered = 600;

/** Whether a position is farther from a place than both can be out. */
const isElsewhere = (place: Position, position: Position): boolean =>
  placesApart(place, position) > place.radius + position.radius;

const walkedOn = (before: Here, now: Position): Here => {
  const { gathered } = before;
  if (gathered === null) return { is: 'here', now, gathered, told: null };
  const place = meanPosition(gathered);
  if (place !== null && isElsewhere(place, now)) {
    return { is: 'here', now, gathered: [now], told: 'moved' };
  }
  // what is told of having moved stays readable while the new place is gathered
  const told = before.told === 'moved' && gathered.length < 3 ? 'moved' : null;
  return { is: 'here', now, gathered: [...gathered, now].slice(-mostGathered), told };
};

/** Whether there is anything to show of a walk: it goes on, or says why it does not. */
export const isShown = (state: WalkState): boolean => state.is !== 'off' || state.why !== null;

/** Whether positions are asked for. */
export const isWatching = ({ is }: WalkState): boolean => is === 'waiting' || is === 'here';

const watched = (state: WalkState, event: WalkEvent): WalkState => {
  const here = state.is === 'here' ? state : null;
  switch (event.do) {
    case 'position': {
      const { position } = event;
      if (here !== null) return walkedOn(here, position);
      return { is: 'here', now: position, gathered: null, told: null };
    }
    case 'lack':
      if (here !== null) return { ...here, told: event.lack };
      return { is: 'waiting', lack: event.lack };
    case 'hide':
      return { is: 'paused' };
    case 'gather':
      return here === null ? state : { ...here, gathered: [here.now], told: null };
    case 'ungather':
      return here === null ? state : { ...here, gathered: null, told: null };
    default:
      return state;
  }
};

/** The state after an event; the same where the event means nothing to it. */
export const walked = (state: WalkState, event: WalkEvent): WalkState => {
  if (event.do === 'stop') return { is: 'off', why: null };
  if (event.do === 'end') return { is: 'off', why: event.why };
  if (event.do === 'start') return state.is === 'off' ? { is: 'waiting', lack: null } : state;
  if (event.do === 'show') return state.is === 'paused' ? { is: 'waiting', lack: null } : state;
  return isWatching(state) ? watched(state, event) : state;
};

/** Where a mark would be dropped: the place that is gathered, else the last position; null where there is none. */
export const placeOfWalk = (state: WalkState): Position | null =>
  state.is === 'here' ? meanPosition(state.gathered ?? [state.now]) : null;
