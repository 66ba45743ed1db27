import { heldKeys } from '../../../canvas/heldKeys.ts';
import { toolbox } from '../../../editor/toolbox.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { ToolId } from '../../../store/toolId.ts';
import { keyName } from './keyName.ts';

const labelOf = (tool: ToolId): string => toolbox.find(({ id }) => id === tool)?.label ?? '';

/** What is done without keys, in the order in which the page shows it. */
export const gestureIds = [
  'tap',
  'drag selected',
  'drag',
  'rest',
  'two fingers',
  'pen',
  'palm',
  'finger beside the pen',
  'click',
  'drag by mouse',
  'wheel',
  'other button',
  'middle button',
  'Space and drag',
  'Shift',
  'along the tape',
] as const;

export type GestureId = (typeof gestureIds)[number];

/** A gesture: with what it is made, how, and what it does. */
export interface Gesture {
  readonly with: 'touch' | 'pen' | 'mouse' | 'any';
  readonly how: string;
  readonly does: string;
}

export const gestures: Readonly<Record<GestureId, Gesture>> = {
  tap: {
    with: 'touch',
    how: phrase`Tap`,
    does: phrase`sets a mark with a tool in hand; else selects what is there`,
  },
  'drag selected': {
    with: 'touch',
    how: phrase`Drag what is selected`,
    does: phrase`moves it; a finger drags nothing else`,
  },
  drag: {
    with: 'touch',
    how: phrase`Drag anywhere else`,
    does: phrase`moves the pad, while ${labelOf('select')} or ${labelOf('pan')} is in hand`,
  },
  rest: {
    with: 'touch',
    how: phrase`Rest a finger on something`,
    does: phrase`selects it and opens its card, with any tool in hand`,
  },
  'two fingers': {
    with: 'touch',
    how: phrase`Two fingers`,
    does: phrase`move the pad and show it larger or smaller, with any tool in hand`,
  },
  pen: {
    with: 'pen',
    how: phrase`Pen`,
    does: phrase`draws and drags at once, as a mouse does`,
  },
  palm: {
    with: 'pen',
    how: phrase`A hand that rests beside the pen`,
    does: phrase`does nothing`,
  },
  'finger beside the pen': {
    with: 'pen',
    how: phrase`A finger, just after the pen`,
    does: phrase`moves the pad and draws nothing`,
  },
  click: {
    with: 'mouse',
    how: phrase`Click`,
    does: phrase`sets a mark with a tool in hand; else selects what is there`,
  },
  'drag by mouse': {
    with: 'mouse',
    how: phrase`Drag`,
    does: phrase`moves what it is on; on bare ground it moves the pad`,
  },
  wheel: { with: 'mouse', how: phrase`Wheel`, does: phrase`shows the yard larger or smaller` },
  'other button': {
    with: 'mouse',
    how: phrase`The other button`,
    does: phrase`selects what it is on and opens its card, with any tool in hand`,
  },
  'middle button': {
    with: 'mouse',
    how: phrase`Drag with the middle button`,
    does: phrase`moves the pad, with any tool in hand`,
  },
  'Space and drag': {
    with: 'mouse',
    how: phrase`Hold ${keyName(heldKeys.pan)} and drag`,
    does: phrase`moves the pad, with any tool in hand`,
  },
  Shift: {
    with: 'mouse',
    how: phrase`Hold ${keyName(heldKeys.free)} while drawing`,
    does: phrase`snaps to nothing`,
  },
  'along the tape': {
    with: 'any',
    how: phrase`Drag a gate along the tape`,
    does: phrase`moves it along its leg; its reading follows`,
  },
};
