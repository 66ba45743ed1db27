import { slack } from '../../geometry/tolerance.ts';
import { inches, sum } from '../../units/inches.ts';
import type { Term } from '../opening.ts';
import type { Remedy } from './remedy.ts';
import { onTape, writer, type SetCase } from './setCase.ts';
import { asItIs, joined, phrase } from '../../phrases/phrase.ts';

const totals = (terms: readonly Term[]): { low: number; high: number } => ({
  low: sum(terms.map(({ low }) => low)),
  high: sum(terms.map(({ high }) => high)),
});

const named = (unsure: readonly Term[]): string =>
  joined(
    (['hinge', 'leaf'] as const)
      .filter((role) => unsure.some((term) => term.role === role))
      .map((role) => (role === 'hinge' ? phrase`the hinges` : phrase`the leaves at the latch`)),
    phrase` and `,
  );

/** Between which sizes the unsure parts together must lie for the latch to catch at every width. */
const mustBe = ({ opening, widths }: SetCase, unsure: readonly Term[]) => {
  const of = (spread: Term['spread']) => opening.terms.filter((term) => term.spread === spread);
  const known = of('uncertain').filter((term) => !unsure.includes(term));
  const taken = totals(known).high;
  const [loose, reach] = [totals(of('adjustable')), totals(of('catch'))];
  return {
    from: Math.max(...widths) - taken - loose.high - reach.high,
    to: Math.min(...widths) - taken - loose.low - reach.low,
  };
};

/** To measure what is not sure, and what that must show; null where nothing that it shows helps. */
export const measureRemedy = (set: SetCase): Remedy | null => {
  const unsure = set.opening.terms.filter(
    ({ spread, low, high }) => spread === 'uncertain' && high - low > slack,
  );
  if (unsure.length === 0) return null;
  const write = writer(set);
  const { low, high } = totals(unsure);
  const { from, to } = mustBe(set, unsure);
  // top and bottom differ by more than the latch takes up: no size suits both
  if (from > to + slack) return null;
  const ends = [
    ...(from > low + slack ? [phrase`at least ${write(onTape(set, from, 'ceil'))}`] : []),
    ...(to < high - slack ? [phrase`at most ${write(onTape(set, to, 'floor'))}`] : []),
  ];
  const many = unsure.length > 1 ? phrase` together` : '';
  return {
    kind: 'measure',
    what: phrase`Measure ${named(unsure)}: it hangs if they take ${joined(ends, phrase` and `)}${many}.`,
    takesUp: inches(0),
    enough: false,
    working: phrase`planned from ${write(low)} to ${write(high)}${many}: ${unsure
      .map(
        ({ label, low: least, high: most }) =>
          phrase`${asItIs(label)} ${write(least)} to ${write(most)}`,
      )
      .join(', ')}`,
    post: null,
  };
};
