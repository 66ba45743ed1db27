import { addShots } from '../../site/edits/addShots.ts';
import { nextId } from '../../site/nextId.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { ghostMark } from '../ghostPiece.ts';
import type { Input } from '../input.ts';
import type { Answer, Desk, Tool } from '../tool.ts';
import { phrase } from '../../phrases/phrase.ts';

/**
 *   idle --press--> aiming --move--> aiming --release--> asking
 *   asking --press, to move it--> aiming
 *   asking --type--> asking, with that height --finish--> idle, the shot in the document
 *   aiming, asking --leave, back--> idle
 *
 *   any --offer--> idle, with that height and name
 *
 * `offered` is the height that the next shot has unless another is typed: that of the last one, or
 * one that was levelled, with the `name` of its point.
 */
interface Next {
  readonly offered: Inches;
  readonly name: string;
}

export type PlaceShotState = Next &
  ({ readonly is: 'idle' } | { readonly is: 'aiming' | 'asking'; readonly at: SitePoint });

const idle = (offered: Inches, name = ''): PlaceShotState => ({ is: 'idle', offered, name });

const set = (
  at: SitePoint,
  { offered: z, name }: Next,
  { site }: Desk,
): Answer<PlaceShotState> => ({
  state: idle(z),
  commit: { site: addShots(site, [{ ...at, z, label: name }]), label: phrase`Set grade shot` },
  select: { kind: 'shot', id: nextId(site, 'shot') },
});

const on = (state: PlaceShotState, input: Input, desk: Desk): Answer<PlaceShotState> => {
  const { offered, name } = state;
  switch (input.do) {
    case 'offer':
      return { state: idle(input.height, input.name) };
    case 'press':
      return { state: { is: 'aiming', at: input.at, offered, name } };
    case 'move':
      return { state: state.is === 'aiming' ? { ...state, at: input.at } : state };
    case 'release':
      return {
        state: state.is === 'aiming' ? { is: 'asking', at: input.at, offered, name } : state,
      };
    case 'type': {
      const { length } = input;
      return { state: length === null ? state : { ...state, offered: length } };
    }
    case 'finish':
      if (state.is === 'idle') return { state, say: phrase`Tap where the shot was taken first` };
      return set(state.at, state, desk);
    case 'leave':
    case 'back':
      return { state: idle(offered, state.is === 'idle' ? '' : name) };
    default:
      return { state };
  }
};

/** Sets a grade shot where the hand is, once its height is typed. */
export const placeShot: Tool<PlaceShotState> = {
  idle: idle(inches(0)),
  on,
  preview: (state) => (state.is === 'idle' ? [] : [ghostMark(state.at)]),
  prompt: ({ is, name }) =>
    is === 'idle'
      ? name === ''
        ? phrase`Tap where the height of the ground was read`
        : phrase`Tap where ${name} was read`
      : phrase`Type the height and press Enter, or tap elsewhere to move it`,
  asked: (state) => {
    if (state.is !== 'asking') return null;
    const { at, offered, name } = state;
    const field =
      name === ''
        ? phrase`Height, − below the datum`
        : phrase`Height of ${name}, − below the datum`;
    const words = { form: phrase`Height of this grade shot`, field, drop: phrase`Drop this shot` };
    return { what: 'height', at, offered, words };
  },
  rest: ({ offered, name }) => idle(offered, name),
};
