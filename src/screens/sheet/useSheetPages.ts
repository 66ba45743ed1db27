import { useMemo } from 'react';
import type { Page } from '../../drawing/sheet/page.ts';
import { sheetSet } from '../../drawing/sheet/sheetSet.ts';
import { sheetText } from '../../site/sheetText.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';

/** The pages of the crew sheet for the paper that is chosen, and the site's text that they carry. */
export const useSheetPages = (): { readonly pages: readonly Page[]; readonly siteText: string } => {
  const bench = useBench();
  const site = useSite();
  const layout = useLayout();
  const { paper, orientation } = useSession((state) => state.sheet);
  return useMemo(() => {
    const siteText = sheetText(bench.site.getState().drawn(site));
    const way = orientation === 'fitting' ? {} : { orientation };
    return { pages: sheetSet(site, layout, { paper, ...way, siteText }), siteText };
  }, [bench, site, layout, paper, orientation]);
};
