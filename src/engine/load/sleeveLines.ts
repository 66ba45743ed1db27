import type { LoadLine } from '../loadLine.ts';
import type { LoadTicket } from './load.ts';

/** A sleeve for every joint of rail, pipe by pipe, where sticks are not swaged. */
export const sleeveLines = (rails: readonly LoadTicket[]): LoadLine[] =>
  rails.flatMap(({ code, item, ticket: { joints } }): LoadLine[] =>
    joints === 0
      ? []
      : [
          {
            part: 'rails',
            code: `sleeve ${code.split(' ').slice(1).join(' ')}`,
            item: `Sleeve for ${item}`,
            count: joints,
            unit: 'each',
            each: null,
            sold: null,
            rule: 'One a joint of the cut list.',
            source: 'Byesville OH fence code: swedged or sleeved',
            of: { posts: [], lines: [], gates: [] },
          },
        ],
  );
