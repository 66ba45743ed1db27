import { useState } from 'react';
import { triplesIn, type Triple } from '../../../engine/squaring/triplesIn.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { ReadingField } from './ReadingField.tsx';
import { SquareDrawing } from './SquareDrawing.tsx';
import { cornerVerdict, tripleText } from './squaringText.ts';
import { longEnough, squareUnit, type SquareAtHand } from './squareAtHand.ts';
import { Verdict } from './Verdict.tsx';

interface Props {
  readonly hand: SquareAtHand;
  readonly style: LengthStyle;
  readonly onHand: (change: Partial<SquareAtHand>) => void;
}

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

/** A square corner by 3-4-5, as large as there is room for. */
export const CornerSquare = ({ hand, style, onHand }: Props) => {
  const [chosen, setChosen] = useState(0);
  const { base, leg, tape, across } = hand;
  const triples = triplesIn({ legs: [base, leg], tape }, squareUnit(style));
  const triple = triples[Math.min(chosen, triples.length - 1)];
  const enter = (change: Partial<SquareAtHand>): string | null => {
    const fault = longEnough(change, style);
    if (fault === null) onHand(change);
    return fault;
  };
  const write = (length: Inches): string => formatLength(length, style);
  return (
    <>
      <div className="pair">
        <LengthField
          label="Room one way"
          value={base}
          style={style}
          onEnter={(value) => enter({ base: value })}
        />
        <LengthField
          label="Room the other"
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
      {triple === undefined ? (
        <p className="fault" role="status">
          3-4-5 needs legs of {write(inches(3 * squareUnit(style)))} and{' '}
          {write(inches(4 * squareUnit(style)))} and a tape of{' '}
          {write(inches(5 * squareUnit(style)))}: expected more room.
        </p>
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
          <SquareDrawing
            shape="triangle"
            base={triple.long}
            leg={triple.short}
            texts={{
              base: write(triple.long),
              leg: write(triple.short),
              across: write(triple.across),
            }}
          />
          <Steps triple={triple} tape={tape} style={style} />
          <ReadingField
            label="To check, what the tape reads from B to C"
            value={across}
            style={style}
            onEnter={(value) => onHand({ across: value })}
          />
          {across !== null && (
            <Verdict
              verdict={cornerVerdict({ base: triple.long, leg: triple.short, across }, style)}
            />
          )}
        </>
      )}
    </>
  );
};
