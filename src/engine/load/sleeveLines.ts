import type { LoadLine } from '../loadLine.ts';
import type { LoadTicket } from './load.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A sleeve for every joint of rail, pipe by pipe, where sticks are not swaged. */
export const sleeveLines = (rails: readonly LoadTicket[]): LoadLine[] =>
  rails.flatMap(({ code, item, ticket: { joints } }): LoadLine[] =>
    joints === 0
      ? []
      : [
          {
            part: 'rails',
            code: `sleeve ${code.split(' ').slice(1).join(' ')}`,
            item: phrase`Sleeve for ${item}`,
            count: joints,
            unit: 'each',
            each: null,
            sold: null,
            rule: phrase`One a joint of the cut list.`,
            source: phrase`Byesville OH fence code: swedged or sleeved`,
            of: { posts: [], lines: [], gates: [] },
          },
        ],
  );
