import loadHighs from 'highs';
import type { Closed } from '../../../src/engine/posts/spaceOut.ts';

/** A stretch to be spaced: inches, closed ground in order and apart. */
export interface Stretch {
  readonly length: number;
  readonly max: number;
  readonly closed: readonly Closed[];
}

const highs = await loadHighs();

/** Ground between and round the closed pieces, ends included. */
export const openGround = ({ length, closed }: Stretch): Closed[] => {
  const ends = [0, ...closed.flatMap(({ from, to }) => [from, to]), length];
  return Array.from({ length: ends.length / 2 }, (_, n) => ({
    from: ends[2 * n] ?? 0,
    to: ends[2 * n + 1] ?? 0,
  })).filter(({ from, to }) => from <= to);
};

const bayRows = (posts: number, length: number, bound: string): string[] =>
  Array.from({ length: posts + 1 }, (_, n) => {
    const after = n === posts ? '' : `x${n + 1}`;
    const before = n === 0 ? '' : `- x${n}`;
    const rest = n === posts ? bound.replace('RHS', `${-length}`) : bound.replace('RHS', '0');
    return ` b${n}: ${after} ${before} ${rest}`;
  });

/**
 * A mixed-integer model of a stretch with so many posts: a place for each post, a choice of the open
 * ground that it stands in, the largest bay to be made least.
 */
export const bayModel = (stretch: Stretch, posts: number): string => {
  const { length, max } = stretch;
  const open = openGround(stretch);
  const rows = bayRows(posts, length, '- m <= RHS');
  const places = Array.from({ length: posts }, (_, n) => n + 1).flatMap((n) => {
    const sum = (of: (piece: Closed) => number): string =>
      open.map((piece, k) => `- ${of(piece)} z${n}_${k}`).join(' ');
    return [
      ` one${n}: ${open.map((_, k) => `z${n}_${k}`).join(' + ')} = 1`,
      ` lo${n}: x${n} ${sum(({ from }) => from)} >= 0`,
      ` hi${n}: x${n} ${sum(({ to }) => to)} <= 0`,
    ];
  });
  const binaries = Array.from({ length: posts }, (_, n) => open.map((_o, k) => `z${n + 1}_${k}`));
  return [
    'Minimize',
    ' obj: m',
    'Subject To',
    ...rows,
    ...places,
    'Bounds',
    ` 0 <= m <= ${max}`,
    ...(posts === 0 ? [] : ['Binary', ` ${binaries.flat().join(' ')}`]),
    'End',
  ].join('\n');
};

/** The largest bay of a model's solution; null where it has none. */
export const bayOf = (model: string): number | null => {
  const { Status, ObjectiveValue } = highs.solve(model, { mip_rel_gap: 1e-9 });
  return Status === 'Optimal' ? ObjectiveValue : null;
};

/** The smallest largest bay with so many posts, by the model; null where that has no solution. */
export const modelledBay = (stretch: Stretch, posts: number): number | null =>
  bayOf(bayModel(stretch, posts));

/**
 * The least sum of squares of the bays where each post stands in the piece of open ground that is
 * chosen for it and no bay is over `largest`: a convex quadratic model. Null for no solution.
 */
export const modelledSquares = (
  { length }: Stretch,
  pieces: readonly Closed[],
  largest: number,
): number | null => {
  const posts = pieces.length;
  // with u the bays: minimize the sum of u squared
  const bays = Array.from({ length: posts + 1 }, (_, n) => `u${n}`);
  const until = (n: number): string => bays.slice(0, n + 1).join(' + ');
  const model = [
    'Minimize',
    ` obj: [ ${bays.map((bay) => `2 ${bay} ^ 2`).join(' + ')} ] / 2`,
    'Subject To',
    ` all: ${until(posts)} = ${length}`,
    ...pieces.flatMap(({ from, to }, n) => [
      ` lo${n}: ${until(n)} >= ${from}`,
      ` hi${n}: ${until(n)} <= ${to}`,
    ]),
    'Bounds',
    ...bays.map((bay) => ` 0 <= ${bay} <= ${largest}`),
    'End',
  ].join('\n');
  const { Status, ObjectiveValue } = highs.solve(model);
  return Status === 'Optimal' ? ObjectiveValue : null;
};
