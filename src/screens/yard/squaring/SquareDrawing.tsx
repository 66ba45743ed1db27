import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  /** How the two legs are to each other; the base lies, the leg stands. */
  readonly base: number;
  readonly leg: number;
  readonly texts: { readonly base: string; readonly leg: string; readonly across: string };
  readonly shape: 'triangle' | 'rectangle';
}

/** The drawing in px of its own, and what is kept free for its letters. */
const size = { width: 320, height: 230, sides: 62, ends: 34 } as const;

/** The least that a side is drawn against the other, so that its number finds room. */
const leastShare = 0.35;

const scaled = (base: number, leg: number): readonly [width: number, height: number] => {
  const [wide, high] = [size.width - 2 * size.sides, size.height - 2 * size.ends];
  const most = Math.max(base, leg, 1e-9);
  const [b, l] = [Math.max(base / most, leastShare), Math.max(leg / most, leastShare)];
  const scale = Math.min(wide / b, high / l);
  return [b * scale, l * scale];
};

/** A square corner, or a rectangle with its two diagonals, with the numbers to be marked on the ground. */
export const SquareDrawing = ({ base, leg, texts, shape }: Props) => {
  const [width, height] = scaled(base, leg);
  const [left, bottom] = [(size.width - width) / 2, (size.height + height) / 2];
  const [right, top] = [left + width, bottom - height];
  const slope = (Math.atan2(height, width) * 180) / Math.PI;
  const isTriangle = shape === 'triangle';
  const [middleX, middleY] = [(left + right) / 2, (top + bottom) / 2];
  const across = isTriangle ? slope : -slope;
  const name = isTriangle
    ? phrase`Square corner at A: A to B ${texts.base}, A to C ${texts.leg}, B to C ${texts.across}`
    : phrase`Rectangle A B C D: A to B ${texts.base}, A to D ${texts.leg}, A to C and B to D ${texts.across}`;
  return (
    <svg
      className="square-drawing"
      role="img"
      aria-label={name}
      viewBox={`0 0 ${size.width} ${size.height}`}
    >
      {isTriangle ? (
        <polygon points={`${left},${bottom} ${right},${bottom} ${left},${top}`} />
      ) : (
        <>
          <polygon points={`${left},${bottom} ${right},${bottom} ${right},${top} ${left},${top}`} />
          <path d={`M${left} ${bottom}L${right} ${top}M${right} ${bottom}L${left} ${top}`} />
        </>
      )}
      <path className="square-sign" d={`M${left + 14} ${bottom}v-14h-14`} />
      <text className="name" x={left - 12} y={bottom + 12}>
        A
      </text>
      <text className="name" x={right + 12} y={bottom + 12}>
        B
      </text>
      <text className="name" x={(isTriangle ? left : right) + (isTriangle ? -12 : 12)} y={top - 10}>
        C
      </text>
      {!isTriangle && (
        <text className="name" x={left - 12} y={top - 10}>
          D
        </text>
      )}
      <text x={middleX} y={bottom + 20}>
        {texts.base}
      </text>
      <text transform={`translate(${left - 16} ${middleY}) rotate(-90)`}>{texts.leg}</text>
      <text
        transform={`translate(${isTriangle ? middleX + 12 : left + width * 0.3} ${
          isTriangle ? middleY - 12 : bottom - height * 0.3
        }) rotate(${across})`}
      >
        {texts.across}
      </text>
    </svg>
  );
};
