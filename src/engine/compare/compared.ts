import type { PriceList } from '../../site/priceList.ts';
import { sum, type Inches } from '../../units/inches.ts';
import { acceptedAs } from '../acceptedAs.ts';
import type { LineLayout } from '../layout.ts';
import { pricedLoad, type PricedLoad } from '../price/pricedLoad.ts';
import type { Candidate } from './candidate.ts';
import { costsOf, type Costs } from './costs.ts';

/** The figures by which yards are compared. */
export interface Figures {
  readonly posts: number;
  /** Holes in the ground and cores in walls. */
  readonly holes: number;
  /** All fence lines along their marks, gates included. */
  readonly fence: Inches;
  readonly stops: number;
  /** Flags to settle that nobody has accepted. */
  readonly settles: number;
}

/** A yard with its figures, and what it comes to where there is a price list. */
export interface Compared extends Candidate, Figures {
  readonly priced: PricedLoad | null;
  readonly costs: Costs | null;
}

/** The figures of one yard; prices are those of `list`, null for none. */
export const comparedOf = (candidate: Candidate, list: PriceList | null): Compared => {
  const { site, layout, load } = candidate;
  const posts = [...layout.posts.values()];
  const priced = list === null ? null : pricedLoad(site, layout, { load, list });
  const open = layout.flags.filter((flag) => acceptedAs(site, flag) === null);
  return {
    ...candidate,
    posts: posts.length,
    holes: posts.filter(({ hole }) => hole.depth > 0).length,
    fence: sum(Object.values<LineLayout>(layout.lines).map(({ length }) => length)),
    stops: open.filter(({ level }) => level === 'stop').length,
    settles: open.filter(({ level }) => level === 'settle').length,
    priced,
    costs: priced === null || list === null ? null : costsOf(priced, list),
  };
};
