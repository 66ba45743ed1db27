import { useState } from 'react';
import { triplesIn, type Triple } from '../../../engine/squaring/triplesIn.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches, type Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { spot, withElements } from '../../withElements.tsx';
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
  const write = (length: number) => <b>{formatLength(inches(length), style)}</b>;
  const { short, long, across } = triple;
  const both = short + across;
  return (
    <ol className="square-steps">
      <li>
        {withElements(phrase`A is the corner. Along what stands, mark B at ${spot(0)} from A.`, [
          write(long),
        ])}
      </li>
      <li>
        {withElements(
          phrase`Swing ${spot(0)} from A and ${spot(1)} from B: where they meet is C.`,
          [write(short), write(across)],
        )}
      </li>
      {both <= tape && (
        <li>
          {withElements(
            phrase`One tape does both: its end at B, ${spot(0)} held at A, pulled tight at ${spot(1)}. That is C.`,
            [write(both), write(across)],
          )}
        </li>
      )}
    </ol>
  );
};

/** What is missing where not even the smallest fits. */
const NoRoom = ({ style }: Pick<SquareProps, 'style'>) => {
  const write = (times: number): string => formatLength(inches(times * squareUnit(style)), style);
  return (
    <p className="fault" role="status">
      {phrase`3-4-5 needs legs of ${write(3)} and ${write(4)} and a tape of ${write(5)}: expected more room.`}
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
        label={phrase`To check, what the tape reads from B to C`}
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
  const names = { base: phrase`Room one way`, leg: phrase`Room the other` };
  return (
    <>
      <RoomFields hand={hand} style={style} onHand={onHand} names={names} />
      {triple === undefined ? (
        <NoRoom style={style} />
      ) : (
        <>
          <div
            className="choices"
            role="group"
            aria-label={phrase`Lengths that make a square corner`}
          >
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
