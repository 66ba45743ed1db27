import { useMemo } from 'react';
import { pricesFromCsv, type PricesRead } from '../../importers/csv/pricesFromCsv.ts';
import { useSession } from '../bench.ts';

/** The price list at hand, read; null where there is none or it can no longer be read. */
export const usePriceList = (): PricesRead | null => {
  const prices = useSession((state) => state.prices);
  return useMemo(() => {
    if (prices === null) return null;
    const list = pricesFromCsv(prices.text);
    return list.ok ? list.value : null;
  }, [prices]);
};
