import { squareAcross } from '../../../engine/squaring/squareAcross.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useSite } from '../../bench.ts';
import { ReadingField } from './ReadingField.tsx';
import { RoomFields, type SquareProps } from './RoomFields.tsx';
import { SquareDrawing } from './SquareDrawing.tsx';
import { rectangleVerdict, roundingText } from './squaringText.ts';
import { Verdict } from './Verdict.tsx';

/** A rectangle by its two diagonals: what both have to read, and what is wrong where they do not. */
export const RectangleSquare = ({ hand, style, onHand }: SquareProps) => {
  const { trusts } = useSite();
  const { base, leg, tape, ac, bd } = hand;
  const across = squareAcross(base, leg);
  const texts = {
    base: formatLength(base, style),
    leg: formatLength(leg, style),
    across: formatLength(across, style),
  };
  return (
    <>
      <RoomFields
        hand={hand}
        style={style}
        onHand={onHand}
        names={{ base: phrase`A to B`, leg: phrase`A to D` }}
      />
      <SquareDrawing shape="rectangle" base={base} leg={leg} texts={texts} />
      <p className="answer">
        <span>{phrase`Both diagonals have to read`}</span>
        <strong>{texts.across}</strong>
        <span>{roundingText(base, leg, style)}</span>
      </p>
      {across > tape && (
        <p className="note">
          {phrase`The tape is too short for that: square its corners by 3-4-5.`}
        </p>
      )}
      <div className="pair">
        <ReadingField
          label={phrase`A to C reads`}
          value={ac}
          style={style}
          onEnter={(value) => onHand({ ac: value })}
        />
        <ReadingField
          label={phrase`B to D reads`}
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
