import type { LineId } from '../../../site/ids.ts';
import type { Pointer } from '../../pointer.ts';
import type { Stand } from '../../stand.ts';
import type { Desk } from '../../tool.ts';
import type { Typed } from '../../typed.ts';
import { openEndAt } from './openEndAt.ts';

/**
 *   idle --press--> started --press--> drawing --press--> drawing
 *   idle --press on an open end--> drawing
 *   drawing --finish, leave--> idle;  drawing --close, press on its first mark--> idle
 *   drawing --back--> drawing, at the last leg started;  started --back, finish, leave--> idle
 *
 * Every leg is committed as it is drawn: `drawing` only says which line, and at which end.
 */
export type FenceState = (
  | { readonly is: 'idle' }
  /** The first mark is chosen; nothing is in the document yet. */
  | { readonly is: 'started'; readonly first: Stand }
  /** `first` is where the line was started, when it was started here. */
  | {
      readonly is: 'drawing';
      readonly line: LineId;
      readonly end: 'start' | 'end';
      readonly first: Stand | null;
    }
) & { readonly pointer: Pointer; readonly typed: Typed };

type Told = Pick<Desk, 'site' | 'plans'>;

/** What a press starts at a point: a line of its own, or more of the line of that kind that ends there. */
export const begun = (desk: Told, first: Stand, base: Pick<FenceState, 'pointer' | 'typed'>) => {
  const open = openEndAt(desk, first);
  const state: FenceState =
    open === null ? { is: 'started', first, ...base } : { is: 'drawing', ...open, first, ...base };
  return state;
};

/**
 * The state as the document allows it: undo may have taken the line away, redo may have brought it
 * back, an edit elsewhere may have closed it.
 */
export const settled = (desk: Told, state: FenceState): FenceState => {
  const { pointer, typed } = state;
  if (state.is === 'idle') return state;
  if (state.is === 'drawing') {
    const line = desk.site.lines[state.line];
    if (line !== undefined && !line.closed && Object.keys(line.path).length > 1) return state;
  }
  if (state.first === null) return { is: 'idle', pointer, typed };
  return begun(desk, state.first, { pointer, typed });
};
