import { useMemo } from 'react';
import { proposal } from '../../drawing/proposal/proposal.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import type { Load } from '../../engine/load/load.ts';
import {
  customerPrice,
  noPriceList,
  type CustomerPrice,
} from '../../engine/price/customerPrice.ts';
import { pricedLoad } from '../../engine/price/pricedLoad.ts';
import { sheetText } from '../../site/sheetText.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { usePriceList } from './usePriceList.ts';

/** The page for the customer, the price that it tells, and the site's text that it is of. */
export interface ProposalAtHand {
  readonly page: Page;
  readonly price: CustomerPrice;
  readonly siteText: string;
}

/** The proposal for the paper that is chosen, with the price by the list at hand. */
export const useProposal = (load: Load): ProposalAtHand => {
  const bench = useBench();
  const site = useSite();
  const layout = useLayout();
  const list = usePriceList();
  const { paper, orientation } = useSession((state) => state.sheet);
  return useMemo(() => {
    const price =
      list === null ? noPriceList : customerPrice(pricedLoad(site, layout, { load, list }), list);
    const siteText = sheetText(bench.site.getState().drawn(site));
    const way = orientation === 'fitting' ? {} : { orientation };
    return { page: proposal(site, layout, { paper, ...way, siteText, price }), price, siteText };
  }, [bench, site, layout, load, list, paper, orientation]);
};
