import { slack } from '../../geometry/tolerance.ts';

/** A hole's centre along a leg and where along it that centre may not be; inches. */
export interface Standing {
  readonly at: number;
  readonly closed: readonly { readonly from: number; readonly to: number }[];
}

const isClear = ({ at, closed }: Standing, shift: number): boolean =>
  closed.every(({ from, to }) => at + shift <= from + slack || at + shift >= to - slack);

/**
 * The least move along a leg, inches and signed, that brings holes that move together off all
 * closed ground with every centre from 0 to `length`; null where there is none.
 */
export const shiftClear = (holes: readonly Standing[], length: number): number | null => {
  const moves = holes.flatMap(({ at, closed }) =>
    closed.flatMap(({ from, to }) => [from - at, to - at]),
  );
  const fits = (shift: number): boolean =>
    holes.every((hole) => isClear(hole, shift)) &&
    holes.every(({ at }) => at + shift >= -slack && at + shift <= length + slack);
  const [least] = [0, ...moves].filter(fits).toSorted((a, b) => Math.abs(a) - Math.abs(b));
  return least ?? null;
};
