import { verticesOf } from '../../../site/pathOrder.ts';
import type { Site } from '../../../site/site.ts';
import type { Stand } from '../../stand.ts';
import type { FenceState } from './fenceState.ts';

/** The marks of the line being drawn, the one that is drawn on from last; empty while idle. */
export const fenceChain = (site: Site, state: FenceState): Stand[] => {
  if (state.is === 'idle') return [];
  if (state.is === 'started') return [state.first];
  const line = site.lines[state.line];
  const stands = verticesOf(line?.path ?? {}).flatMap(({ mark }): Stand[] => {
    const at = site.marks[mark];
    if (at === undefined) return [];
    return [{ point: { x: at.x, y: at.y }, on: { kind: 'mark', id: mark } }];
  });
  return state.end === 'start' ? stands.toReversed() : stands;
};
