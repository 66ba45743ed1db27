import { contains } from '../../../geometry/contains.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { removeUnderlay } from '../../../site/edits/removeUnderlay.ts';
import type { UnderlayId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import type { Underlay } from '../../../site/underlay.ts';
import { underlayGround } from '../../../site/underlayGround.ts';
import type { Input } from '../../input.ts';
import { lockedLine } from '../../lockedPicture.ts';
import type { PictureWay } from '../../pictureWay.ts';
import { pointerOf } from '../../pointer.ts';
import type { Answer, Desk, Tool } from '../../tool.ts';
import { readTyped } from '../../typed.ts';
import { isDrag } from '../select/dragged.ts';
import { askedOf, told } from './asked.ts';
import { guides } from './guides.ts';
import { marked, wants, without } from './marked.ts';
import { idle, pointsOf, type Marking, type PictureState } from './pictureState.ts';
import { moved, takenAt } from './taken.ts';
import { phrase } from '../../../phrases/phrase.ts';

type Touch = Extract<Input, { readonly at: SitePoint }>;

const chosenId = ({ site, selection }: Desk): UnderlayId | null =>
  selection?.kind === 'underlay' && selection.id in site.underlays ? selection.id : null;

const begin = (way: PictureWay, desk: Desk): Answer<PictureState> => {
  const id = chosenId(desk);
  if (id === null) return { state: idle, say: phrase`Select a picture first: tap it, or its name` };
  if (desk.site.underlays[id]?.locked === true) return { state: idle, say: lockedLine };
  const state = { is: 'marking', id, way, seen: [], shown: [], pointer: null } as const;
  return { state: { ...state, down: false }, draft: null };
};

const lockedAt = (site: Site, at: SitePoint): boolean =>
  Object.values<Underlay>(site.underlays).some((underlay) =>
    contains(underlayGround(underlay), at),
  );

const press = (input: Touch, desk: Desk): Answer<PictureState> => {
  const taken = takenAt(desk.site, chosenId(desk), input);
  if (taken === null) {
    const said = lockedAt(desk.site, input.at) ? { say: lockedLine } : {};
    return { state: idle, select: null, ...said };
  }
  return { state: taken, select: { kind: 'underlay', id: taken.id } };
};

const erase = (state: PictureState, desk: Desk): Answer<PictureState> => {
  const id = chosenId(desk);
  if (id === null) return { state, say: phrase`Nothing is selected: expected a picture to remove` };
  if (desk.site.underlays[id]?.locked === true) return { state, say: lockedLine };
  const commit = { site: removeUnderlay(desk.site, id), label: phrase`Remove picture` };
  return { state: idle, commit, select: null };
};

/** A point less; from a length that is asked back to the points. */
const back = (state: PictureState): Answer<PictureState> => {
  if (state.is === 'asking') {
    const { id, way, seen } = state;
    const points = { id, way, seen, shown: [], pointer: null } as const;
    return { state: without({ is: 'marking', ...points, down: false }), draft: null };
  }
  if (state.is !== 'marking' || state.seen.length === 0) return { state: idle, draft: null };
  return { state: wants(state) === 'place' ? without(state) : lastPlaceOff(state) };
};

/** Takes the last place off, else the last point. */
const lastPlaceOff = (state: Marking): Marking =>
  state.way.endsWith('places') ? { ...state, shown: state.shown.slice(0, -1) } : without(state);

const type = (
  state: PictureState,
  input: Extract<Input, { do: 'type' }>,
  { site }: Desk,
): Answer<PictureState> => {
  if (state.is !== 'asking') return { state, say: phrase`Set the points on the picture first` };
  const typed = readTyped(input, site.lengths);
  return typed.ok
    ? { state: { ...state, reads: typed.value.length } }
    : { state, say: typed.reason };
};

const hand = (state: PictureState, input: Touch, desk: Desk): Answer<PictureState> => {
  const { site } = desk;
  if (state.is === 'asking') return { state };
  if (state.is === 'marking') {
    const next = { ...state, pointer: pointerOf(input, state.pointer) };
    if (input.do === 'press') return { state: { ...next, down: true } };
    const underlay = site.underlays[state.id];
    if (input.do === 'move' || !state.down || underlay === undefined) return { state: next };
    return marked(site, underlay, next);
  }
  if (input.do === 'press') return press(input, desk);
  if (state.is === 'idle') return { state };
  if (input.do === 'release') {
    const { next } = state;
    if (state.is === 'held') return { state: idle, select: { kind: 'underlay', id: next } };
    const label = state.by === 'knob' ? phrase`Turn picture` : phrase`Move picture`;
    return { state: idle, commit: { site: moved(site, state, input.at), label } };
  }
  if (state.is === 'held' && !isDrag(state.from, input)) return { state };
  return { state: { ...state, is: 'moving' }, draft: moved(site, state, input.at) };
};

/** A state of a picture that is no longer there is none. */
const still = (state: PictureState, { site }: Desk): PictureState =>
  state.is === 'idle' || state.id in site.underlays ? state : idle;

const on = (before: PictureState, input: Input, desk: Desk): Answer<PictureState> => {
  const state = still(before, desk);
  switch (input.do) {
    case 'begin':
      return begin(input.way, desk);
    case 'press':
    case 'move':
    case 'release':
      return hand(state, input, desk);
    case 'type':
      return type(state, input, desk);
    case 'finish': {
      const underlay = state.is === 'asking' ? desk.site.underlays[state.id] : undefined;
      if (state.is !== 'asking' || underlay === undefined) return { state };
      return told(desk.site, underlay, state);
    }
    case 'back':
      return back(state);
    case 'leave':
      return { state: idle, draft: null };
    case 'erase':
      return state.is === 'idle' ? erase(state, desk) : back(state);
    default:
      return { state };
  }
};

const markingPrompt = (state: Marking): string => {
  const most = pointsOf[state.way];
  if (wants(state) === 'place') {
    return phrase`Tap the place on the drawing that point ${state.seen.length} shows`;
  }
  const n = state.seen.length + 1;
  if (state.way === 'rectangle') {
    return phrase`Corner ${n} of ${most}: tap the corners of a rectangle on the picture, one after the other round it`;
  }
  return state.way === 'distance'
    ? phrase`Point ${n} of ${most}: tap two points on the picture whose distance you know`
    : phrase`Point ${n} of ${most}: tap a point on the picture`;
};

const prompt = (state: PictureState, desk: Desk): string => {
  if (state.is === 'marking') return markingPrompt(state);
  if (state.is === 'asking') return phrase`Type how long it is on the ground and press Enter`;
  if (state.is === 'moving') return phrase`Let go to lay it down`;
  if (Object.keys(desk.site.underlays).length === 0) {
    return phrase`Drop a photo, a scan or a PDF here, or bring one in from the card`;
  }
  const id = chosenId(desk);
  if (id === null) return phrase`Tap a picture to select it`;
  return desk.site.underlays[id]?.locked === true
    ? phrase`This picture is locked: it stays where it is`
    : phrase`Drag the picture to move it, its knob to turn it`;
};

/** Lays pictures under the drawing: moves and turns them, sizes and straightens them by their points. */
export const picture: Tool<PictureState> = {
  idle,
  on,
  preview: (state, { site }) =>
    state.is === 'marking' || state.is === 'asking' ? guides(site, state) : [],
  prompt,
  asked: (state, { site }) => {
    const underlay = state.is === 'asking' ? site.underlays[state.id] : undefined;
    return state.is === 'asking' && underlay !== undefined ? askedOf(underlay, state) : null;
  },
  steps: (state) => {
    if (state.is !== 'marking') return null;
    const { seen, shown, way } = state;
    const pairs = way.endsWith('places');
    return {
      set: pairs ? seen.length + shown.length : seen.length,
      of: pointsOf[way] * (pairs ? 2 : 1),
      form: pairs ? phrase`Points and their places` : phrase`Points on the picture`,
    };
  },
  rest: () => idle,
};
