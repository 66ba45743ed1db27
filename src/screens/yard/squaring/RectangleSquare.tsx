import { squareAcross } from '../../../engine/squaring/squareAcross.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { ReadingField } from './ReadingField.tsx';
import { SquareDrawing } from './SquareDrawing.tsx';
import { longEnough, type SquareAtHand } from './squareAtHand.ts';
import { rectangleVerdict, roundingText } from './squaringText.ts';
import { Verdict } from './Verdict.tsx';

interface Props {
  readonly hand: SquareAtHand;
  readonly style: LengthStyle;
  readonly onHand: (change: Partial<SquareAtHand>) => void;
}

/** A rectangle by its two diagonals: what both have to read, and what is wrong where they do not. */
export const RectangleSquare = ({ hand, style, onHand }: Props) => {
  const { trusts } = useSite();
  const { base, leg, tape, ac, bd } = hand;
  const across = squareAcross(base, leg);
  const enter = (change: Partial<SquareAtHand>): string | null => {
    const fault = longEnough(change, style);
    if (fault === null) onHand(change);
    return fault;
  };
  const texts = {
    base: formatLength(base, style),
    leg: formatLength(leg, style),
    across: formatLength(across, style),
  };
  return (
    <>
      <div className="pair">
        <LengthField
          label="A to B"
          value={base}
          style={style}
          onEnter={(value) => enter({ base: value })}
        />
        <LengthField
          label="A to D"
          value={leg}
          style={style}
          onEnter={(value) => enter({ leg: value })}
        />
        <LengthField
          label="Tape"
          value={tape}
          style={style}
          onEnter={(value) => enter({ tape: value })}
        />
      </div>
      <SquareDrawing shape="rectangle" base={base} leg={leg} texts={texts} />
      <p className="answer">
        <span>Both diagonals have to read</span>
        <strong>{texts.across}</strong>
        <span>{roundingText(base, leg, style)}</span>
      </p>
      {across > tape && (
        <p className="note">The tape is too short for that: square its corners by 3-4-5.</p>
      )}
      <div className="pair">
        <ReadingField
          label="A to C reads"
          value={ac}
          style={style}
          onEnter={(value) => onHand({ ac: value })}
        />
        <ReadingField
          label="B to D reads"
          value={bd}
          style={style}
          onEnter={(value) => onHand({ bd: value })}
        />
      </div>
      {ac !== null && bd !== null && (
        <Verdict verdict={rectangleVerdict({ base, side: leg, ac, bd }, style, trusts)} />
      )}
    </>
  );
};
