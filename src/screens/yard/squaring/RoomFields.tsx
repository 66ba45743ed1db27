import { phrase } from '../../../phrases/phrase.ts';
import type { Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { longEnough, type SquareAtHand } from './squareAtHand.ts';

/** What both ways of squaring a corner work on, and are given. */
export interface SquareProps {
  readonly hand: SquareAtHand;
  readonly style: LengthStyle;
  readonly onHand: (change: Partial<SquareAtHand>) => void;
}

interface Props extends SquareProps {
  /** What the two legs are called. */
  readonly names: { readonly base: string; readonly leg: string };
}

/** The two legs and the tape that are at hand. */
export const RoomFields = ({ hand, style, onHand, names }: Props) => {
  const fields = [
    ['base', names.base],
    ['leg', names.leg],
    ['tape', phrase`Tape`],
  ] as const;
  const enter = (change: Partial<SquareAtHand>): string | null => {
    const fault = longEnough(change, style);
    if (fault === null) onHand(change);
    return fault;
  };
  return (
    <div className="pair">
      {fields.map(([key, label]) => (
        <LengthField
          key={key}
          label={label}
          value={hand[key]}
          style={style}
          onEnter={(value: Inches) => enter({ [key]: value })}
        />
      ))}
    </div>
  );
};
