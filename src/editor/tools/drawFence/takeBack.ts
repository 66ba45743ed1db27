import { removeLine } from '../../../site/edits/removeLine.ts';
import { removeVertex } from '../../../site/edits/removeVertex.ts';
import { verticesOf } from '../../../site/pathOrder.ts';
import type { Answer, Desk } from '../../tool.ts';
import { untyped } from '../../typed.ts';
import { fenceChain } from './fenceChain.ts';
import type { FenceState } from './fenceState.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Takes the last mark off the line being drawn; off the first leg the line itself, off that all. */
export const takeBack = (state: FenceState, desk: Desk): Answer<FenceState> => {
  const { pointer } = state;
  const rest = { pointer, typed: untyped };
  if (state.is !== 'drawing') return { state: { is: 'idle', ...rest } };
  const { line, end } = state;
  const vertices = verticesOf(desk.site.lines[line]?.path ?? {});
  const last = vertices.at(end === 'start' ? 0 : -1);
  const label = phrase`Take off last mark`;
  if (last !== undefined && vertices.length > 2) {
    return {
      state: { ...state, ...rest },
      commit: { site: removeVertex(desk.site, line, last.id), label },
    };
  }
  const [first] = fenceChain(desk.site, state);
  return {
    state: first ? { is: 'started', first, ...rest } : { is: 'idle', ...rest },
    commit: { site: removeLine(desk.site, line), label },
    select: null,
  };
};
