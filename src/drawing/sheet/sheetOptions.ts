import type { CustomerPrices } from '../../engine/compare/customerPrices.ts';
import type { Orientation, PaperName } from './papers.ts';
import type { Reader } from './setParts.ts';

/** How a set of sheets is made. */
export interface SheetOptions {
  readonly paper: PaperName;
  /**
   * Which way the sheets lie. Unless said the way that gives the larger plan, wide if equal; lists turn the
   * other way where far more of them has room on a page.
   */
  readonly orientation?: Orientation;
  /** The saved text of the site: the title block carries its check value. */
  readonly siteText: string;
  /** Whose set it is; the whole one unless said. */
  readonly reader?: Reader;
  /** What the customer's page of a rep's set tells of the price; that it is not worked out unless said. */
  readonly prices?: Pick<CustomerPrices, 'price' | 'others'>;
}
