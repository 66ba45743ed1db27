import loadHighs from 'highs';
import type { CutTask } from '../../../src/engine/cut/cutTask.ts';

const highs = await loadHighs();

/** Every way to fill a stick to which no other piece can be added. */
const everyWay = ({ pieces, kerf }: CutTask, stick: number): number[][] => {
  const ways: number[][] = [];
  const add = (n: number, room: number, counts: readonly number[]): void => {
    const piece = pieces[n];
    if (piece === undefined) {
      const full = pieces.every(
        ({ length, count }, m) => length + kerf > room || (counts[m] ?? 0) >= count,
      );
      if (full) ways.push([...counts]);
      return;
    }
    const size = piece.length + kerf;
    for (let count = Math.min(piece.count, Math.floor(room / size)); count >= 0; count -= 1) {
      add(n + 1, room - count * size, [...counts, count]);
    }
  };
  add(0, stick + kerf, []);
  return ways;
};

/** A mixed-integer model of the fewest sticks that have to be bought, over every way to fill one and every offcut. */
export const stickModel = (task: CutTask): string => {
  const bought = everyWay(task, task.stick).map((counts, n) => ({ name: `x${n}`, counts }));
  const offcuts = task.offcuts.map(({ length }, m) =>
    everyWay(task, length).map((counts, n) => ({ name: `y${m}_${n}`, counts })),
  );
  const all = [...bought, ...offcuts.flat()];
  const sums = task.pieces.map(({ count }, n) => {
    const terms = all.flatMap(({ name, counts }) =>
      (counts[n] ?? 0) > 0 ? [`${counts[n]} ${name}`] : [],
    );
    return ` c${n}: ${terms.join('\n + ')} >= ${count}`;
  });
  const limits = task.offcuts.map(
    ({ count }, m) =>
      ` o${m}: ${(offcuts[m] ?? []).map(({ name }) => name).join('\n + ')} <= ${count}`,
  );
  return [
    'Minimize',
    ` obj: ${bought.map(({ name }) => name).join('\n + ')}`,
    'Subject To',
    ...sums,
    ...limits,
    'General',
    ` ${all.map(({ name }) => name).join('\n ')}`,
    'End',
  ].join('\n');
};

/** The sticks of a model's solution; null where it is not proven in so many seconds. */
export const sticksOf = (model: string, seconds: number): number | null => {
  const { Status, ObjectiveValue } = highs.solve(model, {
    time_limit: seconds,
    output_flag: false,
    // the count is a whole number: what is nearer than one is proven
    mip_abs_gap: 0.99,
    mip_rel_gap: 0,
  });
  return Status === 'Optimal' ? Math.round(ObjectiveValue) : null;
};

/** The fewest sticks that have to be bought, by the model; null where that is not proven in so many seconds. */
export const modelledSticks = (task: CutTask, seconds: number): number | null =>
  sticksOf(stickModel(task), seconds);
