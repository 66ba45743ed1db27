import type { Primitive } from '../drawing/primitive.ts';
import type { Input } from './input.ts';
import type { Answer, Asked, Desk, Piece, Steps, Tool } from './tool.ts';

/** A tool in one of its states, the state's type hidden: what `send` keeps for every tool. */
export interface Machine {
  /** The answer to an input, and the machine in its next state. */
  readonly on: (
    input: Input,
    desk: Desk,
  ) => { readonly next: Machine; readonly answer: Answer<unknown> };
  readonly preview: (desk: Desk) => readonly Primitive[];
  readonly prompt: (desk: Desk) => string;
  readonly piece: (desk: Desk) => Piece | null;
  readonly asked: (desk: Desk) => Asked | null;
  readonly steps: (desk: Desk) => Steps | null;
  /** The machine as it is put aside for another tool. */
  readonly rest: () => Machine;
}

/** An edit that refuses what it is given is told in its one line; the state stays. */
const answered = <State>(state: State, asked: () => Answer<State>): Answer<State> => {
  try {
    return asked();
  } catch (error) {
    if (error instanceof RangeError) return { state, say: error.message };
    throw error;
  }
};

/** A tool in a state, its idle one unless said otherwise. */
export const machine = <State>(tool: Tool<State>, state: State = tool.idle): Machine => ({
  on: (input, desk) => {
    const answer = answered(state, () => tool.on(state, input, desk));
    return { next: machine(tool, answer.state), answer };
  },
  preview: (desk) => tool.preview(state, desk),
  prompt: (desk) => tool.prompt(state, desk),
  piece: (desk) => tool.piece?.(state, desk) ?? null,
  asked: (desk) => tool.asked?.(state, desk) ?? null,
  steps: (desk) => tool.steps?.(state, desk) ?? null,
  rest: () => machine(tool, tool.rest(state)),
});
