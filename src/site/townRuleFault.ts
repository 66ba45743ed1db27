import type { TownRule } from './townRule.ts';
import { phrase } from '../phrases/phrase.ts';

/** What keeps a rule of a town from saying anything: the field, and what was expected there. */
export interface TownRuleFault {
  readonly field: 'town' | 'limit' | 'words';
  readonly expected: string;
}

/**
 * What is wrong with a rule of a town: it has a town; a measure has a limit and no limit stands
 * without one; a rule without a measure says something in words. Null where nothing is.
 */
export const townRuleFault = ({ town, measure, limit, words }: TownRule): TownRuleFault | null => {
  if (town.trim() === '') return { field: 'town', expected: phrase`a name` };
  if (measure !== null && limit === null)
    return { field: 'limit', expected: phrase`a length for “${measure}”` };
  if (measure === null && limit !== null)
    return { field: 'limit', expected: phrase`nothing, or a measure that it limits` };
  if (measure === null && words.trim() === '')
    return { field: 'words', expected: phrase`what the town asks, or a measure with its limit` };
  return null;
};
