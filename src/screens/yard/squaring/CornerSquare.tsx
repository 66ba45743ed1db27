import { useState } from 'react';
import { triplesIn, type Triple } from '../../../engine/squaring/triplesIn.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { ReadingField } from './ReadingField.tsx';
import { RoomFields, type SquareProps } from './RoomFields.tsx';
import { SquareDrawing } from './SquareDrawing.tsx';
import { cornerVerdict, tripleText } from './squaringText.ts';
import { squareUnit } from './squareAtHand.ts';
import { Verdict } from './Verdict.tsx';

/** What is done on the ground with three lengths, one step after another. */
const Steps = ({
  triple,
  tape,
  style,
}: {
  readonly triple: Triple;
  readonly tape: Inches;
  readonly style: LengthStyle;
}) => {
  const write = (length: number): string => formatLength(inches(length), style);
  const { short, long, across } = triple;
  const both = short + across;
  return (
    <ol className="square-steps">
      <li>
        A is the corner. Along what stands, mark B at <b>{write(long)}</b> from A.
      </li>
      <li>
        Swing <b>{write(short)}</b> from A and <b>{write(across)}</b> from B: where they meet is C.
      </li>
      {both <= tape && (
        <li>
          One tape does both: its end at B, <b>{write(both)}</b> held at A, pulled tight at{' '}
          <b>{write(across)}</b>. That is C.
        </li>
      )}
    </ol>
  );
};

/** What is missing where not even the smallest fits. */
const NoRoom = ({ style }: Pick<SquareProps, 'style'>) => {
  const [short, long, across] = [3, 4, 5].map((times) =>
    formatLength(inches(times * squareUnit(style)), style),
  );
  return (
    <p className="fault" role="status">
      3-4-5 needs legs of {short} and {long} and a tape of {across}: expected more room.
    </p>
  );
};

interface ChosenProps extends SquareProps {
  readonly triple: Triple;
}

/** Three lengths drawn, laid out step by step, and checked. */
const Chosen = ({ triple, hand: { tape, across }, style, onHand }: ChosenProps) => {
  const write = (length: Inches): string => formatLength(length, style);
  const texts = {
    base: write(triple.long),
    leg: write(triple.short),
    across: write(triple.across),
  };
  return (
    <>
      <SquareDrawing shape="triangle" base={triple.long} leg={triple.short} texts={texts} />
      <Steps triple={triple} tape={tape} style={style} />
      <ReadingField
        label="To check, what the tape reads from B to C"
        value={across}
        style={style}
        onEnter={(value) => onHand({ across: value })}
      />
      {across !== null && (
        <Verdict verdict={cornerVerdict({ base: triple.long, leg: triple.short, across }, style)} />
      )}
    </>
  );
};

/** A square corner by 3-4-5, as large as there is room for. */
export const CornerSquare = ({ hand, style, onHand }: SquareProps) => {
  const [chosen, setChosen] = useState(0);
  const { base, leg, tape } = hand;
  const triples = triplesIn({ legs: [base, leg], tape }, squareUnit(style));
  const triple = triples[Math.min(chosen, triples.length - 1)];
  const names = { base: 'Room one way', leg: 'Room the other' };
  return (
    <>
      <RoomFields hand={hand} style={style} onHand={onHand} names={names} />
      {triple === undefined ? (
        <NoRoom style={style} />
      ) : (
        <>
          <div className="choices" role="group" aria-label="Lengths that make a square corner">
            {triples.map((one, n) => (
              <button
                key={one.short}
                type="button"
                aria-pressed={one === triple}
                onClick={() => setChosen(n)}
              >
                {tripleText(one, style)}
              </button>
            ))}
          </div>
          <Chosen triple={triple} hand={hand} style={style} onHand={onHand} />
        </>
      )}
    </>
  );
};
