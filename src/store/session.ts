import { createStore } from 'zustand/vanilla';
import type { PostId } from '../engine/post.ts';
import type { Counting } from '../site/counting.ts';
import type { GateId, LineId } from '../site/ids.ts';
import { noCalls, type CallsAtHand } from './callsAtHand.ts';
import type { Plans } from './plans.ts';
import type { PricesAtHand } from './pricesAtHand.ts';
import type { Selection } from './selection.ts';
import type { SheetOptions } from './sheetOptions.ts';
import type { ToolId } from './toolId.ts';
import type { Tour } from './tour.ts';
import type { View } from './view.ts';

export const screenNames = ['yard', 'openings', 'load', 'sheet'] as const;
/** `sun` is the outdoor theme of high contrast. */
export const themes = ['day', 'dark', 'sun'] as const;

/** Things that one line of the load list counts, and what the line is called. */
export interface Lit {
  readonly item: string;
  readonly posts: readonly PostId[];
  readonly lines: readonly LineId[];
  readonly gates: readonly GateId[];
}

/** What belongs to the hand at work and not to the document: kept on the device, not undone. */
export interface Session {
  readonly screen: (typeof screenNames)[number];
  readonly theme: (typeof themes)[number];
  readonly tool: ToolId;
  readonly selection: Selection;
  /** What a line of the load list counts, lit up on the pad; null for nothing. */
  readonly lit: Lit | null;
  readonly view: View;
  /** One line for the hand; empty when there is nothing to say. */
  readonly say: string;
  readonly sheet: SheetOptions;
  readonly plans: Plans;
  readonly calls: CallsAtHand;
  readonly prices: PricesAtHand | null;
  /** What new sites count by; null for what the trade does. */
  readonly counting: Counting | null;
  /** Whether the page of keys and gestures lies over the screen. */
  readonly help: 'open' | 'closed';
  /** Where the tour is; null while nobody takes it. */
  readonly tour: Tour | null;
}

/** The session with which the program starts; `setState` writes any part of it. */
export const createSession = (plans: Plans) =>
  createStore<Session>()(() => ({
    screen: 'yard',
    theme: 'day',
    tool: 'select',
    selection: null,
    lit: null,
    // 1 px to 2 in shows a lot of 200 ft on a desk; the pad fits the view once it knows its size
    view: { scale: 0.5, x: 0, y: 0 },
    say: '',
    sheet: { paper: 'usual', orientation: 'fitting', reader: 'all', language: null },
    plans,
    calls: noCalls,
    prices: null,
    counting: null,
    help: 'closed',
    tour: null,
  }));

export type SessionStore = ReturnType<typeof createSession>;
