import { clearPassage } from '../../../engine/gate/clearPassage.ts';
import type { GateLayout } from '../../../engine/layout.ts';
import { phrase } from '../../../phrases/phrase.ts';
import type { Gate } from '../../../site/gate.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { practice, type Reason } from './reason.ts';

/** Why so much is left to pass through a gate: the opening, what each leaf that stands open takes off it, and how it is measured. */
export const passageReasons = (
  gate: Gate,
  laid: GateLayout,
  lengths: LengthStyle,
): readonly Reason[] => {
  const { clear, terms, source } = clearPassage(gate, laid);
  const style = fineStyle(lengths);
  const write = (size: number) => formatLength(inches(Math.abs(size)), style);
  return [
    ...terms.map(({ label, size }) => ({
      says: size < 0 ? phrase`Less ${write(size)}: ${label}.` : phrase`${write(size)}: ${label}.`,
      source,
    })),
    {
      says: phrase`That leaves ${write(clear)}. A latch that stands out from a post or a leaf is not counted: measure it.`,
      source: practice,
    },
  ];
};
