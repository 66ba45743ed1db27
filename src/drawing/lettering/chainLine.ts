import type { PaperPoint } from '../../geometry/point.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';

export type ChainPrimitive = Extract<Primitive, { kind: 'dimension chain' }>;

/** One tier of a chain: a dimension line beside points in a row, and which points it ticks. */
export interface ChainLine {
  readonly points: readonly PaperPoint[];
  /** Unit vectors on the paper: along the chain and out from the fence. */
  readonly along: PaperPoint;
  readonly out: PaperPoint;
  /** From the points to the line, paper inches. */
  readonly off: number;
  /** From the line to that of the outermost tier, paper inches. */
  readonly beyond: number;
  /** Where its extension lines begin, from the points, paper inches. */
  readonly from: number;
}

/** From one tier of a chain out to the next, paper inches. */
export const toNextTier = 0.27;

/** Extension lines begin clear of the thing dimensioned, paper inches. */
const clear = 0.05;

/** The innermost dimension line of a chain; null for a chain without length. */
export const chainLineOf = (chain: ChainPrimitive, projection: Projection): ChainLine | null => {
  const points = chain.points.map((point) => toPaper(projection, point));
  const [first, last] = [points[0], points.at(-1)];
  const along = first && last ? unitVector(first, last) : null;
  if (along === null) return null;
  const side = chain.off < 0 ? -1 : 1;
  const out = { x: side * along.y, y: -side * along.x };
  return { points, along, out, off: Math.abs(chain.off), beyond: 0, from: clear };
};

/** A point of a chain moved out to its dimension line. */
export const onLine = (
  { out, off }: Pick<ChainLine, 'out' | 'off'>,
  at: PaperPoint,
): PaperPoint => ({
  x: at.x + out.x * off,
  y: at.y + out.y * off,
});

/** The first and the last point of a dimension line. */
export const chainEnds = ({ points }: Pick<ChainLine, 'points'>): readonly PaperPoint[] => {
  const [first, last] = [points[0], points.at(-1)];
  return first === undefined || last === undefined ? [] : [first, last];
};

/** Which way texts along a chain are turned, counter-clockwise as seen. */
export const chainAngle = ({ along }: ChainLine): Radians => radians(Math.atan2(-along.y, along.x));
