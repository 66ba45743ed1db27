import type { Comparison } from '../../engine/compare/comparison.ts';
import { comparedName } from './comparedName.ts';
import type { Column } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The columns of yards side by side: what is told, then each of them. */
export const comparedColumns = ({ columns }: Pick<Comparison, 'columns'>): Column[] => [
  { heading: phrase`What`, align: 'left', share: 2 },
  ...columns.map((one): Column => ({ heading: comparedName(one), align: 'right', share: 1 })),
];
