import { useDeferredValue, useMemo, useState } from 'react';
import { proposal } from '../../drawing/proposal/proposal.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { customerPrices, type CustomerPrices } from '../../engine/compare/customerPrices.ts';
import type { Candidate } from '../../engine/compare/candidate.ts';
import type { Load } from '../../engine/load/load.ts';
import { sheetText } from '../../site/sheetText.ts';
import type { Site } from '../../site/site.ts';
import { rememberCandidates } from '../../store/rememberCandidates.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { paperOf } from '../sheet/paperOf.ts';
import { usePriceList } from './usePriceList.ts';

/** The page for the customer: what it tells of prices, how much stands in its way, and what it is of. */
export interface ProposalAtHand {
  readonly page: Page;
  readonly prices: CustomerPrices;
  readonly stops: number;
  readonly site: Site;
  readonly siteText: string;
}

/** The proposal for the paper that is chosen, by the price list at hand, with every other way to build the yard. */
export const useProposal = (load: Load): ProposalAtHand | null => {
  const bench = useBench();
  const [site, layout] = [useSite(), useLayout()];
  const now = useMemo(
    (): Candidate => ({ label: '', alternative: null, site, layout, load }),
    [site, layout, load],
  );
  // the page is drawn and every other way laid out: a hand that types does not wait for it
  const drawn = useDeferredValue(now);
  const list = usePriceList();
  const [candidatesOf] = useState(() => rememberCandidates());
  const { paper, orientation } = useSession((state) => state.sheet);
  return useMemo(() => {
    if (drawn.load.lines.length === 0) return null;
    const prices = customerPrices(candidatesOf(drawn.site, [drawn]), list);
    const siteText = sheetText(bench.site.getState().drawn(drawn.site));
    const on = paperOf({ paper, orientation }, drawn.site);
    const page = proposal(drawn.site, drawn.layout, { ...on, siteText, prices });
    const stops = drawn.layout.flags.filter(({ level }) => level === 'stop').length;
    return { page, prices, stops, site: drawn.site, siteText };
  }, [bench, candidatesOf, drawn, list, paper, orientation]);
};
