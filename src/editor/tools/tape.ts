import { add } from '../../geometry/add.ts';
import { distance } from '../../geometry/distance.ts';
import { scale } from '../../geometry/scale.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { lineOffset } from '../../geometry/lineOffset.ts';
import { markName } from '../../engine/survey/markName.ts';
import { addMark } from '../../site/edits/addMark.ts';
import { addObservation } from '../../site/edits/addObservation.ts';
import { moveMark } from '../../site/edits/moveMark.ts';
import { setTape } from '../../site/edits/setTape.ts';
import { marksOfFeatures } from '../../site/marksInUse.ts';
import type { MarkId } from '../../site/ids.ts';
import { nextId } from '../../site/nextId.ts';
import type { Site } from '../../site/site.ts';
import { tapeBetween } from '../../site/tapeBetween.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { touchedEdge } from '../touchedEdge.ts';
import { ghostMark } from '../ghostPiece.ts';
import type { Input } from '../input.ts';
import { marksNear } from '../near/marksNear.ts';
import type { Answer, Asked, Desk, Tool } from '../tool.ts';
import { readTyped } from '../typed.ts';
import { phrase, phraseOf } from '../../phrases/phrase.ts';

/** What a tape is pulled to from a mark: another mark, ground where there is none yet, or a wall. */
type Target =
  | { readonly kind: 'mark'; readonly mark: MarkId }
  | { readonly kind: 'ground' }
  | { readonly kind: 'wall'; readonly from: MarkId; readonly to: MarkId };

/**
 *   idle --press on a mark--> pulled --press on a mark, a wall or open ground--> asking
 *   asking --type--> asking, the yard shown as it would stand --finish--> idle, in the document
 *   asking --press--> asking, to what was pressed;  pulled, asking --leave, back--> idle
 */
export type TapeState =
  | { readonly is: 'idle' }
  | { readonly is: 'pulled'; readonly from: MarkId; readonly pointer: SitePoint | null }
  | {
      readonly is: 'asking';
      readonly from: MarkId;
      readonly target: Target;
      /** Where it was pressed. */
      readonly at: SitePoint;
      readonly reads: Inches | null;
    };

type Asking = Extract<TapeState, { readonly is: 'asking' }>;
type Touch = Extract<Input, { readonly at: SitePoint }>;

const idle: TapeState = { is: 'idle' };

const markNear = (site: Site, { at, reach }: Touch): MarkId | null => {
  const [first] = marksNear(site, { at, reach })
    .map(({ id, point }) => ({ id, away: distance(point, at) }))
    .filter(({ away }) => away <= reach)
    .toSorted((a, b) => a.away - b.away);
  return first?.id ?? null;
};

const targetAt = (site: Site, from: MarkId, input: Touch): Target => {
  const mark = markNear(site, input);
  if (mark !== null) return { kind: 'mark', mark };
  const edge = touchedEdge(site, input);
  if (edge === null || edge.bow !== 0 || edge.marks.includes(from)) return { kind: 'ground' };
  const [start, end] = edge.marks;
  return { kind: 'wall', from: start, to: end };
};

/** How far it is by the drawing, inches: what is offered before anything is typed. */
const drawnLength = (site: Site, { from, target, at }: Asking): Inches => {
  const here = site.marks[from];
  if (here === undefined) return inches(0);
  if (target.kind === 'ground') return inches(distance(here, at));
  if (target.kind === 'mark') return inches(distance(here, site.marks[target.mark] ?? at));
  const [start, end] = [site.marks[target.from], site.marks[target.to]];
  return inches(
    start === undefined || end === undefined ? 0 : Math.abs(lineOffset(here, start, end)),
  );
};

/** What the tape reads already, else what the drawing has. */
const offered = (site: Site, state: Asking): Inches => {
  const { from, target } = state;
  const found = target.kind === 'mark' ? tapeBetween(site, from, target.mark) : null;
  return found?.tape.length ?? drawnLength(site, state);
};

/**
 * The site in which one of two marks has gone along the line between them until they are as far apart as
 * the tape reads: the one that it is pulled to, or the one that it is hooked to where only that is free
 * of walls. A fixed mark stays.
 */
const pulledTo = (
  site: Site,
  { from, to }: { readonly from: MarkId; readonly to: MarkId },
  reads: Inches,
): Site => {
  const stuck = (id: MarkId): boolean =>
    marksOfFeatures(site).has(id) || site.marks[id]?.fixed === true;
  const [stays, goes] = stuck(to) && !stuck(from) ? [to, from] : [from, to];
  const [here, there] = [site.marks[stays], site.marks[goes]];
  if (here === undefined || there === undefined || there.fixed) return site;
  const way = unitVector<'site'>(here, there);
  return way === null ? site : moveMark(site, goes, add<'site'>(here, scale<'site'>(way, reads)));
};

/** The site in which the tape reads so, and the mark that it was pulled to, or from where to a wall. */
const told = (site: Site, { from, target, at }: Asking, reads: Inches): readonly [Site, MarkId] => {
  if (target.kind === 'mark') {
    const moved = pulledTo(site, { from, to: target.mark }, reads);
    return [setTape(moved, from, target.mark, reads), target.mark];
  }
  if (target.kind === 'ground') {
    const mark = nextId(site, 'mark');
    return [setTape(addMark(site, at), from, mark, reads), mark];
  }
  const [here, start, end] = [site.marks[from], site.marks[target.from], site.marks[target.to]];
  const left = !here || !start || !end || lineOffset(here, start, end) >= 0;
  const seen = { kind: 'offset', at: from, from: target.from, to: target.to } as const;
  const off = inches(left ? reads : -reads);
  return [addObservation(site, { ...seen, distance: off, trust: null, label: '' }), from];
};

/** While a figure is half typed the yard does not jump: it is shown from half to twice what is drawn. */
const isNear = (reads: number, drawn: number): boolean => reads >= drawn / 2 && reads <= drawn * 2;

const pressed = (state: TapeState, input: Touch, { site }: Desk): Answer<TapeState> => {
  if (state.is === 'idle' || site.marks[state.from] === undefined) {
    const from = markNear(site, input);
    if (from !== null) return { state: { is: 'pulled', from, pointer: null } };
    return {
      state: idle,
      say: phrase`Tap a mark to hook the tape to: a corner, a pin, the end of a fence`,
    };
  }
  const { from } = state;
  const target = targetAt(site, from, input);
  if (target.kind === 'mark' && target.mark === from) {
    return { state, say: phrase`The tape is hooked there: expected another mark to pull it to` };
  }
  return { state: { is: 'asking', from, target, at: input.at, reads: null }, draft: null };
};

const type = (state: TapeState, input: Extract<Input, { do: 'type' }>, { site }: Desk) => {
  if (state.is !== 'asking')
    return { state, say: phrase`Tap the two marks first, then type what the tape reads` };
  const typed = readTyped(input, site.lengths);
  if (!typed.ok) return { state, say: typed.reason };
  const reads = typed.value.length;
  if (reads === null) return { state: { ...state, reads: null }, draft: null };
  const draft = isNear(reads, drawnLength(site, state)) ? told(site, state, reads)[0] : null;
  return { state: { ...state, reads }, draft };
};

const finish = (state: TapeState, { site }: Desk): Answer<TapeState> => {
  if (state.is !== 'asking') return { state: idle };
  const [taped, mark] = told(site, state, state.reads ?? offered(site, state));
  return {
    state: idle,
    commit: {
      site: taped,
      label: state.target.kind === 'wall' ? phrase`Tape off a wall` : phraseOf('edit')`Tape`,
    },
    select: { kind: 'mark', id: mark },
  };
};

const on = (state: TapeState, input: Input, desk: Desk): Answer<TapeState> => {
  switch (input.do) {
    case 'press':
      return pressed(state, input, desk);
    case 'move':
      return state.is === 'pulled' ? { state: { ...state, pointer: input.at } } : { state };
    case 'type':
      return type(state, input, desk);
    case 'finish':
      return finish(state, desk);
    case 'leave':
    case 'back':
      return { state: idle, draft: null };
    default:
      return { state };
  }
};

const nameOf = ({ site, layout }: Desk, id: MarkId): string => markName(site, layout.posts, id);

const targetName = (desk: Desk, target: Target): string => {
  if (target.kind === 'ground') return phrase`a new mark`;
  if (target.kind === 'mark') return nameOf(desk, target.mark);
  return phrase`the line ${nameOf(desk, target.from)} to ${nameOf(desk, target.to)}`;
};

const asked = (state: TapeState, desk: Desk): Asked | null => {
  if (state.is !== 'asking') return null;
  const field = phrase`${nameOf(desk, state.from)} to ${targetName(desk, state.target)}`;
  const form =
    state.target.kind === 'wall' ? phrase`Square off a line` : phrase`What the tape reads`;
  const words = { form, field, drop: phrase`Drop this tape` };
  return { what: 'length', at: state.at, offered: offered(desk.site, state), words };
};

const ends = ({ site }: Desk, state: TapeState): readonly SitePoint[] => {
  if (state.is === 'idle') return [];
  const from = site.marks[state.from];
  if (from === undefined) return [];
  if (state.is === 'pulled') return state.pointer === null ? [from] : [from, state.pointer];
  const { target, at } = state;
  if (target.kind === 'ground') return [from, at];
  if (target.kind === 'mark') return [from, site.marks[target.mark] ?? at];
  const [start, end] = [site.marks[target.from], site.marks[target.to]];
  return start === undefined || end === undefined ? [from] : [from, midpoint(start, end)];
};

/** Pulls a tape from a mark to another, to a new one, or square to a wall, and takes what it reads. */
export const tape: Tool<TapeState> = {
  idle,
  on,
  preview: (state, desk) => {
    const points = ends(desk, state);
    if (points.length < 2) return points.map(ghostMark);
    return [{ kind: 'polyline', points, closed: false, pen: 'tape' }, ...points.map(ghostMark)];
  },
  prompt: (state, desk) => {
    if (state.is === 'idle') return phrase`Tap the mark that the tape is hooked to`;
    const from = nameOf(desk, state.from);
    if (state.is === 'pulled') {
      return phrase`From ${from}: tap the mark, the wall or the ground that the tape is pulled to`;
    }
    const drawn = formatLength(drawnLength(desk.site, state), desk.site.lengths);
    return phrase`Type what the tape reads and press Enter; the drawing has ${drawn}`;
  },
  asked,
  rest: () => idle,
};
