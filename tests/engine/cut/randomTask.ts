import type { CutTask } from '../../../src/engine/cut/cutTask.ts';

/** Numbers from 0 to 1, always the same ones for a seed (a linear congruence, as of ANSI C). */
const drawsOf = (seed: number) => {
  let state = seed;
  return () => {
    state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
    return state / 2_147_483_648;
  };
};

const sorts = [
  { from: 0.12, to: 0.72, lengths: 10, count: 12 },
  { from: 0.2, to: 0.5, lengths: 12, count: 3 },
  { from: 0.15, to: 0.95, lengths: 6, count: 30 },
] as const;

/** An invented task: a 21 ft stick in eighths of an inch, every second one with offcuts, every third with a kerf. */
export const randomTask = (n: number): CutTask => {
  const draw = drawsOf(7 + 7919 * n);
  for (let warm = 0; warm < 5; warm += 1) draw();
  const { from, to, lengths, count } = sorts[n % sorts.length] ?? sorts[0];
  const stick = 2016;
  const pieces = new Map<number, number>();
  const many = 2 + Math.floor(draw() * (lengths - 1));
  while (pieces.size < many) {
    pieces.set(Math.floor(stick * (from + (to - from) * draw())), 1 + Math.floor(count * draw()));
  }
  const offcuts = new Map<number, number>();
  for (let left = n % 2 === 0 ? 0 : 3; left > 0; left -= 1) {
    offcuts.set(Math.floor(stick * (0.3 + 0.6 * draw())), 1 + Math.floor(2 * draw()));
  }
  const listed = (map: ReadonlyMap<number, number>) =>
    [...map].map(([length, times]) => ({ length, count: times }));
  return { pieces: listed(pieces), stick, offcuts: listed(offcuts), kerf: n % 3 === 0 ? 1 : 0 };
};
