import type { PointColumns } from './pointColumns.ts';
import type { CsvRow } from './readCsv.ts';
import { phrase } from '../../phrases/phrase.ts';

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
        ({
          label: phrase`name`,
          x: phrase`x (east)`,
          y: phrase`y (north)`,
          z: phrase`z`,
          remark: phrase`remark`,
        })[column],
    )
    .join(', ');
