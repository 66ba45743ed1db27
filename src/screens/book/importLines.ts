import { bookColumns } from '../../exporters/csv/bookColumns.ts';
import type { TakenRow } from '../../importers/book/bookFromCsv.ts';
import type { Parts } from '../../site/parts.ts';

/** What a row of a file would change in its part of the book, column by column. */
export const changeLine = ({ line, id, hardware }: TakenRow, book: Parts): string => {
  const old = book[id];
  const changes = bookColumns.flatMap(({ name, write }) => {
    const [from, to] = [old === undefined ? '' : write(old), write(hardware)];
    if (from === to) return [];
    return [
      `${name.toLowerCase()} ${from === '' ? 'nothing' : from} to ${to === '' ? 'nothing' : to}`,
    ];
  });
  return `line ${line}: ${old?.label ?? hardware.label}: ${changes.join(', ')}`;
};
