import { coldStartRow } from './rows/coldStart.ts';
import type { Row } from './row.ts';
import { crewSheet } from './rows/crewSheet.ts';
import { cutting } from './rows/cutting.ts';
import { layoutGrowth } from './rows/layoutGrowth.ts';
import { layoutRows } from './rows/layoutRows.ts';
import { loadList } from './rows/loadList.ts';
import { spacing } from './rows/spacing.ts';
import { padRows } from './rows/padRows.ts';
import { surveying } from './rows/surveying.ts';
import { touch } from './rows/touch.ts';

/** All rows of the bench, in the order in which they are printed. */
export const rows: readonly Row[] = [
  ...padRows,
  ...layoutRows,
  layoutGrowth,
  loadList,
  spacing,
  cutting,
  surveying,
  touch,
  ...crewSheet,
  coldStartRow,
];
