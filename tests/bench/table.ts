import type { Figure, Row, Times } from './row.ts';

const wide = (text: string, width: number): string => text.padEnd(width);
const right = (text: string, width: number): string => text.padStart(width);

const number = (value: number): string => {
  if (!Number.isFinite(value)) return '-';
  return value >= 100 ? value.toFixed(0) : value.toPrecision(3);
};

const times = (all: Times | null): string =>
  all === null ? '-' : `${number(all.median)} (${number(all.p95)})`;

/** Whether a row keeps its bar. */
export const holds = ({ bar }: Row, { ratio }: Figure): boolean => ratio <= bar;

/** The figures of some rows as lines of text: milliseconds are medians, with the 95th of a hundred beside. */
export const tableOf = (
  done: readonly { readonly row: Row; readonly figure: Figure }[],
): string => {
  const widest = (of: (row: Row) => string): number =>
    done.reduce((most, { row }) => Math.max(most, of(row).length), 0);
  const [works, againsts] = [widest(({ work }) => work), widest(({ against }) => against)];
  const head = [
    wide('work', works),
    wide('against', againsts),
    right('ms (p95)', 16),
    right('against', 16),
    right('ratio', 9),
    right('both orders', 16),
    right('bar', 7),
  ].join('  ');
  const lines = done.map(({ row, figure }) => {
    const [one, other] = figure.orders;
    return [
      wide(row.work, works),
      wide(row.against, againsts),
      right(times(figure.ours), 16),
      right(times(figure.theirs), 16),
      right(number(figure.ratio), 9),
      right(`${number(one)} ${number(other)}`, 16),
      right(String(row.bar), 7),
      holds(row, figure) ? 'holds' : 'MISSES',
      figure.note,
    ].join('  ');
  });
  return [head, ...lines].join('\n');
};
