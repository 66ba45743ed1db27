import { useState } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import type { Inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { SheetOver } from '../../frame/SheetOver.tsx';
import { CornerSquare } from './CornerSquare.tsx';
import { RectangleSquare } from './RectangleSquare.tsx';
import { squareStart, type SquareAtHand } from './squareAtHand.ts';
import './squaring.css';

interface Props {
  /** How long the legs are of the corner that is squared; null for a corner that is not drawn. */
  readonly legs: readonly [Inches, Inches] | null;
  readonly onClose: () => void;
}

const ways = [
  { way: 'corner', label: phrase`One corner: 3-4-5` },
  { way: 'rectangle', label: phrase`Four corners: diagonals` },
] as const;

/** The numbers to mark on the ground for a square corner, and what is wrong where it is not. */
export const SquaringSheet = ({ legs, onClose }: Props) => {
  const style = useSite().lengths;
  const [way, setWay] = useState<'corner' | 'rectangle'>('corner');
  const [hand, setHand] = useState<SquareAtHand>(() => squareStart(style, legs));
  const onHand = (change: Partial<SquareAtHand>) => setHand((was) => ({ ...was, ...change }));
  const Way = way === 'corner' ? CornerSquare : RectangleSquare;
  return (
    <SheetOver title={phrase`Square a corner`} onClose={onClose}>
      <div className="stack squaring">
        <div className="choices" role="group" aria-label={phrase`How`}>
          {ways.map((one) => (
            <button
              key={one.way}
              type="button"
              aria-pressed={one.way === way}
              onClick={() => setWay(one.way)}
            >
              {one.label}
            </button>
          ))}
        </div>
        <Way hand={hand} style={style} onHand={onHand} />
        <p className="caution-line">
          {phrase`Measure both diagonals before you dig. Tapes level and tight; on a slope hold them level and plumb down.`}
        </p>
      </div>
    </SheetOver>
  );
};
