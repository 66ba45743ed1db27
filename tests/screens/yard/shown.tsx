import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { layOutSite } from '../../../src/engine/layOutSite.ts';
import { BenchContext, type Bench } from '../../../src/screens/bench.ts';
import type { Site } from '../../../src/site/site.ts';
import { createBookStore } from '../../../src/store/bookStore.ts';
import { hardwareKind } from '../../../src/store/hardwareKind.ts';
import { townRuleKind } from '../../../src/store/townRuleKind.ts';
import { createSession } from '../../../src/store/session.ts';
import { createSiteStore } from '../../../src/store/siteStore.ts';
import { samplePlans } from '../../store/samplePlans.ts';

/** A card of the yard as it is first shown on a site, as markup. */
export const shown = (site: Site, card: ReactElement): string => {
  const bench = {
    book: createBookStore(hardwareKind, {}),
    townBook: createBookStore(townRuleKind, {}),
    site: createSiteStore(site, 'Test'),
    session: createSession(samplePlans),
    layOut: layOutSite,
  } as unknown as Bench;
  return renderToStaticMarkup(<BenchContext value={bench}>{card}</BenchContext>);
};
