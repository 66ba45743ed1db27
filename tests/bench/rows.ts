import type { Row } from './row.ts';

/** All rows of the bench, in the order in which they are printed. */
export const rows: readonly Row[] = [];
