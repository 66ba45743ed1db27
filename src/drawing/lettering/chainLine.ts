import type { PaperPoint } from '../../geometry/point.ts';
import { unitVector } from '../../geometry/unitVector.ts';
import { radians, type Radians } from '../../units/radians.ts';
import type { Primitive } from '../primitive.ts';
import { toPaper, type Projection } from '../projection.ts';

export type ChainPrimitive = Extract<Primitive, { kind: 'dimension chain' }>;

/** A dimension line beside points in a row: where it runs and which points it ticks. */
export interface ChainLine {
  readonly points: readonly PaperPoint[];
  /** Unit vectors on the paper: along the chain and out from the fence. */
  readonly along: PaperPoint;
  readonly out: PaperPoint;
  /** From the points to the line, paper inches. */
  readonly off: number;
}

/** From the pieces of a chain out to its total, paper inches. */
export const toTotal = 0.27;

/** The dimension line of a chain's pieces; null for a chain without length. */
export const chainLineOf = (chain: ChainPrimitive, projection: Projection): ChainLine | null => {
  const points = chain.points.map((point) => toPaper(projection, point));
  const [first, last] = [points[0], points.at(-1)];
  const along = first && last ? unitVector(first, last) : null;
  if (along === null) return null;
  const side = chain.off < 0 ? -1 : 1;
  const out = { x: side * along.y, y: -side * along.x };
  return { points, along, out, off: Math.abs(chain.off) };
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
export const chainEnds = ({ points }: Pick<ChainLine, 'points'>): readonly PaperPoint[] =>
  [points[0], points.at(-1)].flatMap((point) => point ?? []);

/** Which way texts along a chain are turned, counter-clockwise as seen. */
export const chainAngle = ({ along }: ChainLine): Radians => radians(Math.atan2(-along.y, along.x));
