import type { LoadLine } from '../../engine/loadLine.ts';
import { hourRows } from './hourRows.ts';
import { writeCsv } from './writeCsv.ts';

/** What a price of a line is most likely for: packs where it is sold in them, else things or cubic feet. */
const unitOf = ({ unit, sold }: LoadLine): string => {
  if (sold !== null) return 'pack';
  return unit === 'each' ? 'each' : unit === 'length' ? 'ft' : 'cu ft';
};

/**
 * A price list to be filled in, for what is on a load list: every item once by its code, with a unit that
 * fits and no price, then an hour of work, margin and tax, then the hours of every task as they are taken
 * where a company does not say otherwise. A last column says what each is.
 */
export const pricesToCsv = (lines: readonly LoadLine[]): string => {
  const once = new Map(lines.map((line) => [line.code, line]));
  return writeCsv([
    ['Item', 'Unit', 'Price', 'Currency', 'Number', 'What'],
    ...[...once.values()].map((line) => [line.code, unitOf(line), '', '', '', line.item]),
    ['hour', 'hour', '', '', '', 'an hour of work'],
    ['margin', 'percent', '', '', '', 'on materials and work'],
    ['tax', 'percent', '', '', '', 'on all of it'],
    ...hourRows.map(({ item, units, usual, what }) => [
      item,
      units[0]?.name ?? '',
      usual,
      '',
      '',
      `${what}: ours, a start`,
    ]),
  ]);
};
