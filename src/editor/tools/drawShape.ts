import { distance } from '../../geometry/distance.ts';
import { sameSpot } from '../../geometry/sameSpot.ts';
import type { PenName } from '../../drawing/pens.ts';
import type { Primitive } from '../../drawing/primitive.ts';
import { addFeature } from '../../site/edits/addFeature.ts';
import type { FeatureFields } from '../../site/feature.ts';
import type { FeatureId, MarkId } from '../../site/ids.ts';
import { nextId } from '../../site/nextId.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import type { Plans } from '../../store/plans.ts';
import { chainAim, chainPiece } from '../chainAim.ts';
import { ghostLength, ghostMark } from '../ghostPiece.ts';
import type { Input } from '../input.ts';
import { placeOf } from '../placeOf.ts';
import { pointerOf } from '../pointer.ts';
import type { Pointer } from '../pointer.ts';
import { snap } from '../snap.ts';
import type { Snap } from '../snap.ts';
import { snapGuides } from '../snapGuides.ts';
import { standsStill } from '../standsStill.ts';
import { standOf } from '../stand.ts';
import type { Stand } from '../stand.ts';
import type { Answer, Desk, Tool } from '../tool.ts';
import { taped } from '../taped.ts';
import { readTyped, untyped } from '../typed.ts';
import type { Typed } from '../typed.ts';
import { phrase } from '../../phrases/phrase.ts';
import { theThing, type Thing } from '../theThing.ts';

/** A feature that is drawn corner by corner. */
export interface ShapeKind {
  /** What the hand calls it. */
  readonly noun: Thing;
  readonly pen: PenName;
  /** `either` is closed when the hand closes it and open when it finishes. */
  readonly ends: 'closed' | 'open' | 'either';
  /** What the document says of it, besides its marks. */
  readonly fields: (plans: Plans, end: 'closed' | 'open') => FeatureFields;
}

/**
 *   idle --press--> drawing --press--> drawing --finish, close--> idle
 *                   drawing --back--> drawing, at last idle;  --leave--> idle
 *
 * `corners` is empty while idle. Nothing is committed before the shape is whole.
 */
export interface ShapeState {
  readonly corners: readonly Stand[];
  readonly pointer: Pointer;
  readonly typed: Typed;
}

const idle: ShapeState = { corners: [], pointer: null, typed: untyped };

const least = { closed: 3, open: 2 } as const;

const marksOf = (site: Site, id: FeatureId): MarkId[] => {
  const feature = site.features[id];
  return feature !== undefined && 'path' in feature
    ? verticesOf(feature.path).map(({ mark }) => mark)
    : [];
};

const whole = (kind: ShapeKind, state: ShapeState, desk: Desk, end: 'closed' | 'open') => {
  const { corners } = state;
  if (corners.length < least[end]) {
    return {
      state,
      say: phrase`A ${theThing[kind.noun]} needs at least ${least[end]} points, found ${corners.length}`,
    };
  }
  const places = corners.map((corner) => placeOf(desk.site, corner));
  const lengths = corners.slice(1).map(({ typed }) => typed);
  const added = addFeature(desk.site, kind.fields(desk.plans, end), places);
  const site = taped(added, marksOf(added, nextId(desk.site, 'feature')), lengths);
  return {
    state: idle,
    commit: { site, label: phrase`Draw ${theThing[kind.noun]}` },
    select: { kind: 'feature' as const, id: nextId(desk.site, 'feature') },
  };
};

/** Where the next corner would be; the first corner itself draws the hand to close the shape. */
const nextSnap = (kind: ShapeKind, state: ShapeState, site: Site): Snap | null => {
  const { corners, pointer, typed } = state;
  if (pointer === null) return null;
  const [first] = corners;
  const found = snap(site, chainAim(corners, pointer, typed));
  if (first === undefined || corners.length < 3 || kind.ends === 'open') return found;
  const held = pointer.free || found.kind === 'typed';
  const near = held
    ? sameSpot(first.point, found.point)
    : distance(first.point, pointer.at) <= pointer.reach;
  return near ? { ...first, kind: 'mark', lines: [] } : found;
};

const press = (kind: ShapeKind, state: ShapeState, desk: Desk): Answer<ShapeState> => {
  const { corners } = state;
  const found = nextSnap(kind, state, desk.site);
  if (found === null || state.pointer === null) return { state };
  const [first, here] = [corners[0], corners.at(-1)];
  if (first && corners.length >= 3 && kind.ends !== 'open' && found.point === first.point) {
    return whole(kind, state, desk, 'closed');
  }
  if (standsStill(here, found, state.pointer)) {
    return { state, say: phrase`That is where the last point is: expected one farther on` };
  }
  return {
    state: { ...state, corners: [...corners, standOf(found, state.typed.length)], typed: untyped },
  };
};

const on = (kind: ShapeKind, before: ShapeState, input: Input, desk: Desk): Answer<ShapeState> => {
  const state = { ...before, pointer: pointerOf(input, before.pointer) };
  const { corners } = state;
  switch (input.do) {
    case 'press':
      return press(kind, state, desk);
    case 'type': {
      const typed = readTyped(input, desk.site.lengths);
      return typed.ok ? { state: { ...state, typed: typed.value } } : { state, say: typed.reason };
    }
    case 'finish':
      if (corners.length === 0) return { state };
      return whole(kind, state, desk, kind.ends === 'closed' ? 'closed' : 'open');
    case 'close':
      if (corners.length === 0) return { state };
      if (kind.ends === 'open')
        return { state, say: phrase`A ${theThing[kind.noun]} is not closed` };
      return whole(kind, state, desk, 'closed');
    case 'back':
      return { state: { ...state, corners: corners.slice(0, -1), typed: untyped } };
    case 'leave':
      return { state: { ...idle, pointer: state.pointer } };
    default:
      return { state };
  }
};

const preview = (kind: ShapeKind, state: ShapeState, desk: Desk): Primitive[] => {
  const points = state.corners.map(({ point }) => point);
  const marks = points.map(ghostMark);
  const drawn: Primitive = { kind: 'polyline', points, closed: false, pen: kind.pen };
  const next = nextSnap(kind, state, desk.site);
  if (next === null) return points.length > 1 ? [drawn, ...marks] : marks;
  const here = points.at(-1);
  if (here === undefined) return [...snapGuides(next), ghostMark(next.point)];
  if (state.pointer !== null && standsStill(state.corners.at(-1), next, state.pointer)) {
    return points.length > 1 ? [drawn, ...marks] : marks;
  }
  const closed = kind.ends === 'closed' && points.length > 1;
  return [
    ...snapGuides(next),
    { ...drawn, points: [...points, next.point], closed },
    ...ghostLength(here, next.point, desk.site.lengths),
    ...marks,
    ghostMark(next.point),
  ];
};

const prompt = (kind: ShapeKind, { corners }: ShapeState): string => {
  if (corners.length === 0) return phrase`Tap where the ${theThing[kind.noun]} starts`;
  if (kind.ends === 'closed') {
    return corners.length < 3
      ? phrase`Tap the next corner, or type its length`
      : phrase`Tap the next corner, or the first one to close`;
  }
  return corners.length < 2
    ? phrase`Tap the next point, or type its length`
    : phrase`Tap on, or finish`;
};

/** The tool that draws one kind of shape. A shape begun is kept while another tool is in hand. */
export const drawShape = (kind: ShapeKind): Tool<ShapeState> => ({
  idle,
  on: (state, input, desk) => on(kind, state, input, desk),
  preview: (state, desk) => preview(kind, state, desk),
  prompt: (state) => prompt(kind, state),
  piece: ({ corners }) => chainPiece(corners),
  rest: ({ corners }) => ({ ...idle, corners }),
});
