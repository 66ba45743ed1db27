import { addSpec } from '../../../site/edits/addSpec.ts';
import { closeLine } from '../../../site/edits/closeLine.ts';
import { extendLine } from '../../../site/edits/extendLine.ts';
import { startLine } from '../../../site/edits/startLine.ts';
import type { MarkId } from '../../../site/ids.ts';
import { nextId } from '../../../site/nextId.ts';
import type { Site } from '../../../site/site.ts';
import { chainAim } from '../../chainAim.ts';
import { fenceMark } from '../../fenceMark.ts';
import { snap } from '../../snap.ts';
import { standsStill } from '../../standsStill.ts';
import { standOf } from '../../stand.ts';
import type { Stand } from '../../stand.ts';
import type { Answer, Desk } from '../../tool.ts';
import { taped } from '../../taped.ts';
import { untyped } from '../../typed.ts';
import { fenceChain } from './fenceChain.ts';
import { begun } from './fenceState.ts';
import type { FenceState } from './fenceState.ts';
import { phrase } from '../../../phrases/phrase.ts';

type Started = Extract<FenceState, { readonly is: 'started' }>;
type Drawing = Extract<FenceState, { readonly is: 'drawing' }>;

/** The first leg: a line from the first mark to the one that was chosen now. */
const firstLeg = (state: Started, to: Stand, desk: Desk): Answer<FenceState> => {
  const { pointer } = state;
  const { id, spec } = desk.plans.fence;
  const start = fenceMark(addSpec(desk.site, id, spec), state.first);
  const end = fenceMark(start.site, to);
  const line = nextId(end.site, 'line');
  const drawn = extendLine(startLine(end.site, id, start.mark), line, end.mark);
  const site = taped(drawn, [start.mark, end.mark], [to.typed]);
  const first: Stand = { point: state.first.point, on: { kind: 'mark', id: start.mark } };
  return {
    state: { is: 'drawing', line, end: 'end', first, pointer, typed: untyped },
    commit: { site, label: phrase`Draw fence` },
    select: { kind: 'line', id: line },
  };
};

/** Joins the line to its first mark and ends it. */
export const closeFence = (state: Drawing, desk: Desk): Answer<FenceState> => {
  const { line } = state;
  if (fenceChain(desk.site, state).length < 3) {
    return { state, say: phrase`A fence line needs three marks before it can be closed` };
  }
  return {
    state: { is: 'idle', pointer: null, typed: untyped },
    commit: { site: closeLine(desk.site, line), label: phrase`Close fence line` },
    select: { kind: 'line', id: line },
  };
};

const nextLeg = (state: Drawing, to: Stand, desk: Desk): Answer<FenceState> => {
  const { line, end } = state;
  const chain = fenceChain(desk.site, state);
  const reached = fenceMark(desk.site, to);
  const here = markOf(chain.at(-1));
  const tell = (site: Site): Site =>
    here === null ? site : taped(site, [here, reached.mark], [to.typed]);
  if (reached.mark === markOf(chain[0])) {
    return closeFence(state, { ...desk, site: tell(reached.site) });
  }
  const site: Site = tell(extendLine(reached.site, line, reached.mark, end));
  return {
    state: { ...state, typed: untyped },
    commit: { site, label: phrase`Draw leg` },
    select: { kind: 'line', id: line },
  };
};

const markOf = (stand: Stand | undefined): MarkId | null =>
  stand?.on?.kind === 'mark' ? stand.on.id : null;

/** Answers a press: the first mark of a line, or the far mark of its next leg. */
export const drawLeg = (state: FenceState, desk: Desk): Answer<FenceState> => {
  const { pointer, typed } = state;
  if (pointer === null) return { state };
  const chain = fenceChain(desk.site, state);
  const found = snap(desk.site, chainAim(chain, pointer, typed));
  const to = standOf(found, typed.length);
  if (state.is === 'idle') return { state: begun(desk, to, { pointer, typed: untyped }) };
  if (standsStill(chain.at(-1), found, pointer)) {
    return { state, say: phrase`That is where the last mark is: expected one farther on` };
  }
  return state.is === 'started' ? firstLeg(state, to, desk) : nextLeg(state, to, desk);
};
