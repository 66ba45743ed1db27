import { useDeferredValue, useMemo, useState } from 'react';
import { comparedLoadTable } from '../../../drawing/tables/comparedLoadTable.ts';
import { comparisonTable } from '../../../drawing/tables/comparisonTable.ts';
import { unpricedTexts } from '../../../drawing/tables/unpricedTexts.ts';
import { comparisonOf } from '../../../engine/compare/comparison.ts';
import { toCsv } from '../../../exporters/csv/toCsv.ts';
import { pricesFromCsv } from '../../../importers/csv/pricesFromCsv.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { rememberCandidates } from '../../../store/rememberCandidates.ts';
import { useSession, useSite } from '../../bench.ts';
import { WideTable } from './WideTable.tsx';

interface Props {
  readonly save: (what: string, content: string) => void;
}

/** The yard as drawn and its alternatives side by side, and where their load lists differ. */
export const SideBySide = ({ save }: Props) => {
  // every yard is laid out and counted: a hand that types does not wait for it
  const site = useDeferredValue(useSite());
  const prices = useSession((state) => state.prices);
  const [candidatesOf] = useState(() => rememberCandidates());
  const list = useMemo(() => {
    const found = prices === null ? null : pricesFromCsv(prices.text);
    return found?.ok === true ? found.value : null;
  }, [prices]);
  const comparison = useMemo(
    () => comparisonOf(candidatesOf(site), list),
    [candidatesOf, site, list],
  );
  const figures = comparisonTable(comparison, site);
  const lists = comparedLoadTable(comparison, site);
  const unpriced = unpricedTexts(comparison);
  return (
    <>
      <WideTable table={figures} />
      {list === null && (
        <p className="note">{phrase`What each comes to is told by a price list, above.`}</p>
      )}
      {unpriced.length > 0 && (
        <details className="more">
          <summary>{phrase`What has no price in them`}</summary>
          <ul className="plain">
            {unpriced.map((text) => (
              <li key={text} className="fault">
                {text}.
              </li>
            ))}
          </ul>
        </details>
      )}
      {lists.rows.length === 0 ? (
        <p className="note">{phrase`Their load lists do not differ.`}</p>
      ) : (
        <WideTable table={lists} />
      )}
      <div className="choices">
        <button
          type="button"
          onClick={() => save('side-by-side', toCsv(phrase`Table`, [figures, lists]))}
        >{phrase`Download side by side`}</button>
      </div>
    </>
  );
};
