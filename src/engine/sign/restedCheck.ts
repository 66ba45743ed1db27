import { checkValue } from '../../site/checkValue.ts';
import type { Rested } from './restsOn.ts';

/**
 * The check value of everything that an opening rests on: eight hexadecimal digits that change
 * when any of it does. Whatever order it is told in.
 */
export const restedCheck = (rested: Rested): string =>
  checkValue(JSON.stringify(Object.entries(rested).toSorted(([a], [b]) => (a < b ? -1 : 1))));
