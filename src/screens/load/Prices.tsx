import { useId, useMemo, useState } from 'react';
import { hoursSourceText } from '../../drawing/tables/hoursTexts.ts';
import { priceTable } from '../../drawing/tables/priceTable.ts';
import { candidatesOf } from '../../engine/compare/candidatesOf.ts';
import { namedSites } from '../../engine/compare/namedSites.ts';
import type { Load } from '../../engine/load/load.ts';
import { pricedLoad } from '../../engine/price/pricedLoad.ts';
import { pricesToCsv } from '../../exporters/csv/pricesToCsv.ts';
import { pricesFromCsv, type PricesRead } from '../../importers/csv/pricesFromCsv.ts';
import { phrase } from '../../phrases/phrase.ts';
import { mostPriceText } from '../../store/pricesAtHand.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { TableView } from '../TableView.tsx';
import { usePriceList } from './usePriceList.ts';

interface Props {
  readonly load: Load;
  readonly save: (what: string, content: string) => void;
}

/** What the price list at hand makes of the load list: rows not taken, the priced list, what has no price. */
const Priced = ({ load, list }: Pick<Props, 'load'> & { readonly list: PricesRead }) => {
  const site = useSite();
  const layout = useLayout();
  const priced = useMemo(
    () => pricedLoad(site, layout, { load, list }),
    [list, site, layout, load],
  );
  const hours = hoursSourceText(priced);
  return (
    <>
      {list.refused.length > 0 && (
        <ul className="plain" aria-label={phrase`Rows that were not taken`}>
          {list.refused.map(({ line, reason }) => (
            <li key={line} className="fault">{phrase`Line ${line}: ${reason}.`}</li>
          ))}
        </ul>
      )}
      {priced.unpriced.length > 0 && (
        <p className="fault">{phrase`No price for ${priced.unpriced.join(', ')}: nothing of these is in the total.`}</p>
      )}
      <TableView table={priceTable(priced)} />
      {hours !== null && <p className="note">{phrase`Work: ${hours}.`}</p>}
    </>
  );
};

/** The company's price list, and what the load list comes to by it. It stays on this device. */
export const Prices = ({ load, save }: Props) => {
  const { session } = useBench();
  const prices = useSession((state) => state.prices);
  const list = usePriceList();
  const site = useSite();
  const [fault, setFault] = useState<string | null>(null);
  const id = useId();
  const take = async (file: File | undefined) => {
    if (file === undefined) return;
    if (file.size > mostPriceText)
      return setFault(phrase`${file.name}: too large for a price list`);
    const text = await file.text().catch(() => null);
    if (text === null) return setFault(phrase`${file.name}: cannot be read from this device`);
    const found = pricesFromCsv(text);
    if (!found.ok) return setFault(`${file.name}: ${found.reason}`);
    setFault(null);
    session.setState({
      prices: { name: file.name, text },
      say: phrase`Took prices from ${file.name}`,
    });
  };
  /** Of every way to build the yard, so that one list prices them all. */
  const saveBlank = () =>
    save(
      'prices-to-fill-in',
      pricesToCsv(candidatesOf(namedSites(site)).flatMap((way) => way.load.lines)),
    );
  return (
    <div className="stack">
      <p className="note">{phrase`Prices stay on this device and go with no site. A price list is a CSV with the columns Item, Unit, Price, Currency and Number; Item is the code of a line. Hours of the work stand in it as rows of their own: the list to fill in has them as they are taken now.`}</p>
      <div className="choices">
        <button type="button" onClick={saveBlank}>{phrase`Download a list to fill in`}</button>
        {prices !== null && (
          <button
            type="button"
            onClick={() => session.setState({ prices: null })}
          >{phrase`Forget ${prices.name}`}</button>
        )}
      </div>
      <div className="field">
        <label htmlFor={id}>{phrase`Price list`}</label>
        <input
          id={id}
          type="file"
          accept=".csv,text/csv"
          aria-describedby={fault === null ? undefined : `${id}-said`}
          onChange={({ target }) => {
            void take(target.files?.[0]);
            target.value = '';
          }}
        />
        {fault !== null && (
          <p id={`${id}-said`} className="fault" role="alert">
            {fault}
          </p>
        )}
      </div>
      {list !== null && <Priced load={load} list={list} />}
    </div>
  );
};
