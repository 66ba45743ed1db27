import type { PointColumns } from './pointColumns.ts';
import type { CsvRow } from './readCsv.ts';

/** The columns of a list of points in the order that they stand in, such as `name, y (north), x (east)`. */
export const orderText = (columns: PointColumns, first: CsvRow): string =>
  (['label', 'x', 'y', 'z', 'remark'] as const)
    .flatMap((column) => {
      const at = columns[column]?.at;
      return at === undefined || at >= first.cells.length ? [] : [{ column, at }];
    })
    .toSorted((a, b) => a.at - b.at)
    .map(
      ({ column }) =>
        ({ label: 'name', x: 'x (east)', y: 'y (north)', z: 'z', remark: 'remark' })[column],
    )
    .join(', ');
