import type { Primitive } from '../drawing/primitive.ts';
import type { Layout } from '../engine/layout.ts';
import type { Site } from '../site/site.ts';
import { createCell } from '../store/cell.ts';
import type { Cell } from '../store/cell.ts';
import { current } from '../store/history.ts';
import type { SessionStore } from '../store/session.ts';
import type { SiteStore } from '../store/siteStore.ts';
import { stands } from '../store/stands.ts';
import type { ToolId } from '../store/toolId.ts';
import type { Input } from './input.ts';
import type { Machine } from './machine.ts';
import type { Answer, Asked, Desk, Piece, Steps } from './tool.ts';
import type { ToolEntry } from './toolbox.ts';

/** The stores that inputs act on, and the tools that answer them. */
export interface Workbench {
  readonly site: SiteStore;
  readonly session: SessionStore;
  readonly layOut: (site: Site) => Layout;
  /** Every tool of the yard, each idle. */
  readonly tools: readonly ToolEntry[];
}

/** What the tool in hand shows beside the drawing, and what it says to do next. */
export interface Hand {
  readonly preview: readonly Primitive[];
  readonly prompt: string;
  /** The piece for which a length or bearing can be typed. */
  readonly piece: Piece | null;
  /** The place for which a figure is asked. */
  readonly asked: Asked | null;
  /** The points that are being set one after the other. */
  readonly steps: Steps | null;
}

/** The one way for an input to reach the document. */
export interface Sender {
  readonly send: (input: Input) => void;
  readonly hand: Cell<Hand>;
  /** Lets go of the stores. */
  readonly stop: () => void;
}

/** Brings an answer to the stores: the commit or the draft first, then plans, selection and words. */
const deliver = (
  { site, session }: Workbench,
  input: Input,
  { draft, commit, select, plans, say }: Answer<unknown>,
): void => {
  const store = site.getState();
  if (commit !== undefined) store.commit(commit.site, commit.label);
  else if (draft === null || input.do === 'leave') store.cancel();
  else if (draft !== undefined) store.preview(draft);
  if (plans !== undefined) session.setState({ plans });
  if (select !== undefined) session.setState({ selection: select });
  // what was said stays readable while the hand only moves or lifts
  const hushes = input.do !== 'move' && input.do !== 'release';
  if (say !== undefined || (hushes && session.getState().say !== '')) {
    session.setState({ say: say ?? '' });
  }
};

/**
 * Joins tools and stores: each input goes to the tool that the session names, its answer to the
 * stores. Taking up another tool drops the draft and puts the old one aside, its chain unfinished;
 * what is selected and no longer there is let go.
 */
export const createSend = (bench: Workbench): Sender => {
  const { site, session, layOut } = bench;
  const tools = new Map<ToolId, Machine>(bench.tools.map(({ id, machine }) => [id, machine]));
  const toolOf = (id: ToolId): Machine => {
    const found = tools.get(id);
    if (found === undefined) throw new RangeError(`tools: expected one with the id ${id}`);
    return found;
  };
  let busy = false;
  const deskOf = (seen: Site): Desk => {
    const { selection, plans } = session.getState();
    return { site: seen, layout: layOut(seen), selection, plans };
  };
  const look = (): Hand => {
    const tool = toolOf(session.getState().tool);
    const desk = deskOf(current(site.getState().history));
    return {
      preview: tool.preview(desk),
      prompt: tool.prompt(desk),
      piece: tool.piece(desk),
      asked: tool.asked(desk),
      steps: tool.steps(desk),
    };
  };
  const hand = createCell(look());
  const refresh = (): void => {
    if (!busy) hand.setState(look(), true);
  };
  const send = (input: Input): void => {
    const { tool } = session.getState();
    const { next, answer } = toolOf(tool).on(input, deskOf(site.getState().history.present.site));
    tools.set(tool, next);
    busy = true;
    deliver(bench, input, answer);
    busy = false;
    refresh();
  };
  const stopSite = site.subscribe(({ history }) => {
    const shown = current(history);
    if (!stands(shown, session.getState().selection, layOut(shown).posts)) {
      session.setState({ selection: null });
    }
    refresh();
  });
  const stopSession = session.subscribe((now, before) => {
    if (now.tool !== before.tool) {
      tools.set(before.tool, toolOf(before.tool).rest());
      site.getState().cancel();
    }
    const same = now.selection === before.selection && now.plans === before.plans;
    if (now.tool !== before.tool || !same) refresh();
  });
  const stop = (): void => {
    stopSite();
    stopSession();
  };
  return { send, hand, stop };
};
