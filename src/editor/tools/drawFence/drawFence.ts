import type { Primitive } from '../../../drawing/primitive.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { chainAim, chainPiece } from '../../chainAim.ts';
import { ghostLength, ghostMark } from '../../ghostPiece.ts';
import type { Input } from '../../input.ts';
import { pointerOf } from '../../pointer.ts';
import { snap } from '../../snap.ts';
import { snapGuides } from '../../snapGuides.ts';
import { standsStill } from '../../standsStill.ts';
import type { Answer, Desk, Tool } from '../../tool.ts';
import { readTyped, untyped } from '../../typed.ts';
import { closeFence, drawLeg } from './drawLeg.ts';
import { fenceChain } from './fenceChain.ts';
import { settled } from './fenceState.ts';
import type { FenceState } from './fenceState.ts';
import { takeBack } from './takeBack.ts';
import { phrase } from '../../../phrases/phrase.ts';

const idle: FenceState = { is: 'idle', pointer: null, typed: untyped };

const finish = (state: FenceState): Answer<FenceState> => {
  // what the hand was drawn to belongs to the line that is ended
  const ended: FenceState = { is: 'idle', pointer: null, typed: untyped };
  if (state.is === 'started') {
    return { state: ended, say: phrase`Nothing is drawn: a fence needs two marks` };
  }
  if (state.is !== 'drawing') return { state: ended };
  return { state: ended, select: { kind: 'line', id: state.line } };
};

const type = (state: FenceState, input: Extract<Input, { do: 'type' }>, desk: Desk) => {
  if (state.is === 'idle')
    return { state, say: phrase`Tap where the fence starts, then type its length` };
  const typed = readTyped(input, desk.site.lengths);
  return typed.ok ? { state: { ...state, typed: typed.value } } : { state, say: typed.reason };
};

const on = (before: FenceState, input: Input, desk: Desk): Answer<FenceState> => {
  const pointer = pointerOf(input, before.pointer);
  const state = settled(desk, { ...before, pointer });
  switch (input.do) {
    case 'press':
      return drawLeg(state, desk);
    case 'type':
      return type(state, input, desk);
    case 'finish':
      return finish(state);
    case 'leave':
      return state.is === 'started' ? { state: { ...idle } } : finish(state);
    case 'close':
      if (state.is === 'drawing') return closeFence(state, desk);
      return { state, say: phrase`There is no fence line to close` };
    case 'back':
      return takeBack(state, desk);
    default:
      return { state };
  }
};

const preview = (before: FenceState, desk: Desk): Primitive[] => {
  const state = settled(desk, before);
  const chain = fenceChain(desk.site, state);
  const here = chain.at(-1)?.point;
  const { pointer, typed } = state;
  if (pointer === null) return here === undefined ? [] : [ghostMark(here)];
  const next = snap(desk.site, chainAim(chain, pointer, typed));
  if (here === undefined) return [...snapGuides(next), ghostMark(next.point)];
  if (standsStill(chain.at(-1), next, pointer)) return [ghostMark(here)];
  return [
    ...snapGuides(next),
    {
      kind: 'fence',
      of: desk.plans.fence.spec.infill.kind,
      points: [here, next.point],
      closed: false,
      pen: 'fence ghost',
    },
    ...ghostLength(here, next.point, desk.site.lengths),
    ghostMark(here),
    ghostMark(next.point),
  ];
};

const prompt = (before: FenceState, desk: Desk): string => {
  const { is, typed } = settled(desk, before);
  if (is === 'idle') return phrase`Tap where the fence starts`;
  if (typed.length !== null) {
    const length = formatLength(typed.length, desk.site.lengths);
    return typed.bearing === null
      ? phrase`Next leg ${length}: tap the way it goes`
      : phrase`Next leg ${length}: tap to set it`;
  }
  if (is === 'started') return phrase`Tap the next mark, or type how far it is`;
  return phrase`Tap the next mark, type how far it is, or finish`;
};

/** Draws fence lines leg by leg. An unfinished line is kept while another tool is in hand. */
export const drawFence: Tool<FenceState> = {
  idle,
  on,
  preview,
  prompt,
  piece: (state, desk) => chainPiece(fenceChain(desk.site, settled(desk, state))),
  rest: (state) => ({ ...state, pointer: null, typed: untyped }),
};
