import { cross } from './cross.ts';
import { determinant } from './determinant.ts';
import { distance } from './distance.ts';
import { homographyOf, type FourTies } from './homographyOf.ts';
import type { Point } from './point.ts';
import { depthAt } from './projective.ts';
import { subtract } from './subtract.ts';
import type { Tie } from './tie.ts';
import { spot } from './tolerance.ts';
import { phrase } from '../phrases/phrase.ts';

/** Nearer than this on a picture nobody can tap two points, pixels. Ours, no published source. */
const leastPixels = 2;

/**
 * Three points are in a row when the triangle on them is lower than this share of its longest side: a
 * degree or so. Nearer to a row a slip of one pixel swings the ground about. Ours, no published source.
 */
const leastHeight = 1 / 64;

type Side = readonly Point<string>[];

const together = (points: Side, least: number): boolean =>
  points.some((a, n) => points.slice(n + 1).some((b) => distance(a, b) < least));

const threes = [
  [0, 1, 2],
  [0, 1, 3],
  [0, 2, 3],
  [1, 2, 3],
] as const;

const inRow = (points: Side): boolean =>
  threes.some(([i, j, k]) => {
    const [a, b, c] = [points[i], points[j], points[k]];
    if (a === undefined || b === undefined || c === undefined) return false;
    const longest = Math.max(distance(a, b), distance(b, c), distance(c, a));
    return Math.abs(cross(subtract(b, a), subtract(c, a))) < leastHeight * longest * longest;
  });

/** Why no camera over flat ground has seen it so; null where one can have. */
const unseen = (ties: FourTies): string | null => {
  const map = homographyOf(ties);
  const ahead = ties.every(({ u, v }) => depthAt(map, { x: u, y: v }) > 0);
  // y runs down on a picture and north on the ground: what is seen from above is turned over
  if (ahead && determinant(map) < 0) return null;
  return phrase`the four points do not go round the same way on the picture and on the ground`;
};

/**
 * Why ties do not say where a picture lies, as one line, else null: another number than two or four,
 * two of them on one spot of the picture or of the ground, of four three in a row, or in an order in
 * which no camera sees flat ground from above.
 */
export const tiesFault = (ties: readonly Tie[]): string | null => {
  const count = ties.length;
  if (count !== 2 && count !== 4) return phrase`expected two points or four, found ${count}`;
  const seen = ties.map(({ u, v }) => ({ x: u, y: v }));
  if (together(seen, leastPixels)) return phrase`two of the points are on one spot of the picture`;
  if (together(ties, spot)) return phrase`two of the points are on one spot of the ground`;
  if (count === 2) return null;
  if (inRow(seen)) return phrase`three of the points are in a row on the picture`;
  if (inRow(ties)) return phrase`three of the points are in a row on the ground`;
  return unseen(ties as unknown as FourTies);
};
