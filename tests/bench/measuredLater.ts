import { figureOf } from './measured.ts';
import type { Figure } from './row.ts';

/** Work that is timed until what it promises is there. */
type LateWork = () => Promise<unknown>;

const timed = async (work: LateWork): Promise<number> => {
  const begun = performance.now();
  const made = await work();
  const took = performance.now() - begun;
  if (made === undefined) throw new Error('expected work that returns something');
  return took;
};

/** As `measured`, for work that promises what it makes: rounds that count, and those before that warm both up. */
export const measuredLater = async (
  ours: LateWork,
  theirs: LateWork,
  { rounds, warm, note }: { readonly rounds: number; readonly warm: number; readonly note: string },
): Promise<Figure> => {
  const pairs = { oursFirst: [] as [number, number][], theirsFirst: [] as [number, number][] };
  for (let round = -warm; round < rounds; round += 1) {
    const first = round % 2 === 0 ? 'oursFirst' : 'theirsFirst';
    const before = first === 'oursFirst' ? await timed(ours) : null;
    const reference = await timed(theirs);
    const own = before ?? (await timed(ours));
    if (round >= 0) pairs[first].push([own, reference]);
  }
  return figureOf(pairs, note);
};
