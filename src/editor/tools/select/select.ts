import type { Primitive } from '../../../drawing/primitive.ts';
import type { SitePoint } from '../../../geometry/point.ts';
import { subtract } from '../../../geometry/subtract.ts';
import { joinMarks } from '../../../site/edits/joinMarks.ts';
import { setLegLength } from '../../../site/edits/setLegLength.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { stands } from '../../../store/stands.ts';
import { bowKnob, touchedKnob } from '../../bowKnob.ts';
import { hits, isSame } from '../../hit.ts';
import { isLocked, lockedLine } from '../../lockedPicture.ts';
import type { Input } from '../../input.ts';
import { snapGuides } from '../../snapGuides.ts';
import type { Answer, Desk, Tool } from '../../tool.ts';
import { readTyped } from '../../typed.ts';
import { chordGuides, curved, curveText } from './curved.ts';
import { dragged, isDrag, joinsOnto, markSnap } from './dragged.ts';
import { erased } from './erased.ts';
import { movedBy, type Ground } from './movedBy.ts';
import { pinDragged, pinNudged, type Moved, type Pinned } from './movedPin.ts';
import type { Held, SelectState } from './selectState.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { theThing } from '../../theThing.ts';

type Point = Extract<Input, { readonly at: SitePoint }>;

const idle: SelectState = { is: 'idle', tapped: null };

/** What is selected, if it is still there. */
const chosen = ({ site, layout, selection }: Desk): Held | null =>
  stands(site, selection, layout.posts) ? selection : null;

/** What the hand calls a thing: its kind, of a feature which one. */
const nounOf = (site: Site, what: Held): string => {
  if (what.kind === 'feature') {
    const feature = site.features[what.id];
    return theThing[feature?.kind === 'height zone' ? feature.of : (feature?.kind ?? what.kind)];
  }
  return theThing[what.kind];
};

const isPinned = (what: Held): what is Pinned => what.kind === 'post' || what.kind === 'pin';

type Taken = Extract<SelectState, { readonly is: 'held' | 'dragging' }>;

/** Whether a thing is a leg that was taken by its knob. */
const isBent = (what: Held, knob: SitePoint | null): what is Extract<Held, { kind: 'leg' }> =>
  what.kind === 'leg' && knob !== null;

/** Where the hand has taken a thing, and what is then selected: a post is held from then on. */
const taken = (desk: Desk, { what, from, knob }: Taken, input: Point): Moved => {
  if (isPinned(what)) return pinDragged(desk, what, subtract(input.at, from));
  if (isBent(what, knob)) {
    return { site: curved(desk.site, what, { knob: knob ?? from, from }, input), select: what };
  }
  return { site: dragged(desk, what, from, input), select: what };
};

const stuck = phrase`Nothing moves: its marks belong to a building, a lot line or other ground`;

/** Why a thing that was moved stays where it is; null where it has only come back to its place. */
const stuckBy = (what: Held, { site, layout }: Ground): string | null => {
  const { body } = layout.survey;
  if (body?.fast === true && ['mark', 'line', 'feature'].includes(what.kind)) {
    return phrase`Nothing moves: tapes hold it to a fixed mark. Free that on its card first`;
  }
  if (what.kind === 'underlay') return isLocked(site, what.id) ? lockedLine : null;
  if (what.kind === 'tape') return phrase`A tape moves with its marks: drag one of those`;
  return what.kind === 'leg' ? stuck : null;
};

/**
 * Takes what lies on top, or what a tap has brought up from under it; a tap on what is selected
 * already brings up the next one.
 */
const pressed = (state: SelectState, input: Point, desk: Desk): Answer<SelectState> => {
  const all = hits(desk.site, desk.layout, input);
  const knob = all[0]?.kind === 'gate' ? null : touchedKnob(desk.layout, desk.selection, input);
  const raised = state.is === 'idle' && isSame(state.tapped?.what ?? null, desk.selection);
  const at =
    raised || knob !== null
      ? Math.max(
          0,
          all.findIndex((one) => isSame(one, desk.selection)),
        )
      : 0;
  const what = all[at];
  if (what === undefined) return { state: idle, select: null };
  const again = isSame(what, desk.selection);
  const next = (again ? all[(at + 1) % all.length] : what) ?? what;
  const bow = what.kind === 'leg' ? (knob?.at ?? null) : null;
  return {
    state: { is: 'held', what, from: input.at, of: all.length, next, knob: bow },
    select: what,
  };
};

/** What a hand is drawn to, or the chord of the leg that it bows. */
const guidesFor = (
  what: Held,
  knob: SitePoint | null,
  { site, moved }: { readonly site: Site; readonly moved: Site },
  input: Point,
): readonly Primitive[] => {
  if (isBent(what, knob)) return chordGuides(moved, what);
  return what.kind === 'mark' ? snapGuides(markSnap(site, what.id, input)) : [];
};

const drag = (state: SelectState, input: Point, desk: Desk): Answer<SelectState> => {
  const { site, layout } = desk;
  if (state.is === 'idle' || !stands(site, state.what, layout.posts)) return { state: idle };
  if (state.is === 'held' && !isDrag(state.from, input)) return { state };
  const { what, from, knob } = state;
  const { site: moved, select: chosenNow } = taken(desk, state, input);
  const guides = guidesFor(what, knob, { site, moved }, input);
  const onto = joinsOnto(site, what, input);
  const dragging: SelectState = { is: 'dragging', what, from, knob, guides, onto };
  const why = knob === null && moved === site ? stuckBy(what, desk) : null;
  return why !== null
    ? { state: dragging, draft: null, say: why }
    : { state: dragging, draft: moved, select: chosenNow };
};

/** Makes one mark of two; where that cannot be, the marks stay where they were and one line says why. */
const join = (site: Site, gone: MarkId, onto: MarkId): Answer<SelectState> => {
  try {
    const joined = joinMarks(site, gone, onto);
    const select = { kind: 'mark', id: onto } as const;
    return { state: idle, commit: { site: joined, label: phrase`Join marks` }, select };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { state: idle, draft: null, say: error.message };
  }
};

const release = (state: SelectState, input: Point, desk: Desk): Answer<SelectState> => {
  const { site, layout } = desk;
  if (state.is === 'held' && stands(site, state.next, layout.posts)) {
    const { next, of } = state;
    return { state: { is: 'idle', tapped: { what: next, of } }, draft: null, select: next };
  }
  if (state.is !== 'dragging' || !stands(site, state.what, layout.posts)) {
    return { state: idle, draft: null };
  }
  const { what, knob } = state;
  const onto = joinsOnto(site, what, input);
  if (what.kind === 'mark' && onto !== null) return join(site, what.id, onto);
  const { site: moved, select: chosenNow } = taken(desk, state, input);
  const label = isBent(what, knob) ? phrase`Curve leg` : phrase`Move ${nounOf(site, what)}`;
  return {
    state: idle,
    commit: { site: moved, label },
    select: chosenNow,
  };
};

const nudge = (state: SelectState, { x, y }: { x: number; y: number }, desk: Desk) => {
  const what = chosen(desk);
  if (what === null) return { state, say: phrase`Nothing is selected: expected something to move` };
  const label = phrase`Move ${nounOf(desk.site, what)}`;
  if (isPinned(what)) {
    const { site, select: chosenNow } = pinNudged(desk, what, { x, y });
    return { state: idle, commit: { site, label }, select: chosenNow };
  }
  const moved = movedBy(desk, what, { x, y });
  if (moved === desk.site && what.kind !== 'gate') {
    return { state, say: stuckBy(what, desk) ?? stuck };
  }
  return { state: idle, commit: { site: moved, label } };
};

const erase = (state: SelectState, desk: Desk): Answer<SelectState> => {
  const what = chosen(desk);
  if (what === null)
    return { state, say: phrase`Nothing is selected: expected something to erase` };
  const left = erased(desk.site, what);
  if (!left.ok) return { state, say: left.reason };
  return {
    state: idle,
    commit: {
      site: left.value,
      label: what.kind === 'post' ? phrase`Let post go` : phrase`Erase ${nounOf(desk.site, what)}`,
    },
    select: null,
  };
};

/** A length typed while a leg is selected is the length of that leg. */
const type = (state: SelectState, input: Extract<Input, { do: 'type' }>, desk: Desk) => {
  const what = chosen(desk);
  const typed = readTyped(input, desk.site.lengths);
  if (!typed.ok) return { state, say: typed.reason };
  if (what?.kind !== 'leg') return { state, say: phrase`Select a leg to type its length` };
  if (typed.value.length === null) return { state };
  const site: Site = setLegLength(desk.site, what.line, what.id, typed.value.length);
  return { state: idle, commit: { site, label: phrase`Set leg length` } };
};

const on = (state: SelectState, input: Input, desk: Desk): Answer<SelectState> => {
  switch (input.do) {
    case 'press':
      return pressed(state, input, desk);
    case 'move':
      return drag(state, input, desk);
    case 'release':
      return release(state, input, desk);
    case 'nudge':
      return nudge(state, input, desk);
    case 'erase':
      return erase(state, desk);
    case 'type':
      return type(state, input, desk);
    case 'leave':
      if (state.is === 'idle') return { state: idle, select: null };
      return { state: idle, draft: null, select: state.what };
    default:
      return { state };
  }
};

/** Selects, drags, nudges and erases what is drawn. */
export const select: Tool<SelectState> = {
  idle,
  on,
  preview: (state) => (state.is === 'dragging' ? state.guides : []),
  prompt: (state, desk) => {
    if (state.is === 'dragging') {
      if (isBent(state.what, state.knob)) {
        return phrase`${curveText(desk.site, state.what)}: let go to set it`;
      }
      return state.onto === null
        ? phrase`Let go to set it down`
        : phrase`Let go to join the two marks`;
    }
    const what = chosen(desk);
    if (what === null) return phrase`Tap what you want to change`;
    // no picture takes a tap from the drawing while this tool is in hand
    if (what.kind === 'underlay') return phrase`Take the Picture tool to drag or turn this picture`;
    const more = state.is === 'idle' && isSame(state.tapped?.what ?? null, what);
    const the = nounOf(desk.site, what);
    if (more && (state.tapped?.of ?? 0) > 1) {
      return phrase`Drag the ${the}, or tap again for what is under it`;
    }
    return !more && bowKnob(desk.layout, what) !== null
      ? phrase`Drag the ${the} to move it, or its knob to curve it`
      : phrase`Drag the ${the} to move it`;
  },
  rest: () => idle,
};
