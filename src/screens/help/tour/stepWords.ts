import { toolbox } from '../../../editor/toolbox.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { ToolId } from '../../../store/toolId.ts';
import type { TourStep } from '../../../store/tour.ts';
import { tabs } from '../../frame/tabs.ts';
import { keyName } from '../keys/keyName.ts';

/** What one does in a step, and what there is to know of it. */
export interface StepWords {
  readonly deed: string;
  readonly more: string;
}

const entryOf = (tool: ToolId) => toolbox.find(({ id }) => id === tool);
const keyOf = (tool: ToolId): string => keyName(entryOf(tool)?.key ?? '');
/** As it is written on the key for it. */
const nameOf = (tool: ToolId): string => entryOf(tool)?.label ?? '';
const sheetTab = tabs.find(({ screen }) => screen === 'sheet')?.label ?? '';

/** The words of every step. */
export const stepWords: Readonly<Record<TourStep, StepWords>> = {
  fence: {
    deed: phrase`Take up the tool ${nameOf('fence')}.`,
    more: phrase`It is among the tools, or under the key ${keyOf('fence')}. Whatever you draw on this tour is a drawing like any other: ${phrase`Undo`} takes it back.`,
  },
  start: {
    deed: phrase`Tap the pad where the fence begins.`,
    more: phrase`By keys: the arrows move a crosshair, ${keyName(' ')} sets the mark.`,
  },
  length: {
    deed: phrase`Type how long the first leg is, such as 40', then press the way it runs.`,
    more: phrase`A length that you type counts as read off a tape, and the leg keeps it.`,
  },
  finish: {
    deed: phrase`Draw on if you like, then press ${phrase`Finish`}.`,
    more: phrase`Posts and bays are already worked out: they are on the pad and on the tape below it.`,
  },
  gate: {
    deed: phrase`Take up the tool ${nameOf('gate')} and tap the leg where the gate goes.`,
    more: phrase`The posts make room for it. The key for the tool is ${keyOf('gate')}.`,
  },
  opening: {
    deed: phrase`Read the opening to hold on the card of the gate; open ${phrase`Why`} beside it, and close it again.`,
    more: phrase`It is not the size that the gate is sold by: leaf, hinges and latch each take their part of it.`,
  },
  flag: {
    deed: phrase`Press a flag in the list on the card.`,
    more: phrase`A flag is what this plan has to settle, mend or know of. Pressed, it shows its place on the pad.`,
  },
  tape: {
    deed: phrase`Hook the tape at the other end.`,
    more: phrase`All its readings run from the hook, here and on the crew sheet.`,
  },
  sheet: {
    deed: phrase`Go to ${sheetTab} and download the PDF.`,
    more: phrase`That is what the crew builds from. Opened here again, the PDF brings the drawing back.`,
  },
};

/** What the tour says after its last step. */
export const endWords: StepWords = {
  deed: phrase`That was all of it: drawn, checked, taped and printed.`,
  more: phrase`The yard stays on the pad and on this device. ${phrase`Help`} has this tour again, and every key and gesture.`,
};
