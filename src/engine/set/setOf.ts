import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { gapAt, type Gap } from '../gate/gapAt.ts';
import type { Opening } from '../opening.ts';
import type { Remedy } from './remedy.ts';
import { remediesFor } from './remediesFor.ts';
import { setCase } from './setCase.ts';

/** The width between two posts at one height (inches), and what it leaves for the latch. */
export interface SetWidth {
  readonly at: 'top' | 'bottom';
  readonly width: Inches;
  readonly gap: Gap;
}

/** What comes of a gate whose posts were set. */
export interface SetResult {
  /** Worked out again with the leaves and hinges that were measured on site. */
  readonly opening: Opening;
  readonly widths: readonly SetWidth[];
  /** The one of them that is worse. */
  readonly governs: SetWidth;
  /** Top less bottom, inches; null where the bottom was not measured. */
  readonly outOfParallel: Inches | null;
  /** How far the top of each post leans into the opening, inches; null where nobody has said. */
  readonly leans: { readonly start: Inches | null; readonly end: Inches | null };
  readonly remedies: readonly Remedy[];
}

const severity: Readonly<Record<Gap['verdict'], number>> = {
  holds: 0,
  'may hold': 1,
  'too narrow': 2,
  'too wide': 2,
};

/** How far outside of what holds for sure; less than nothing inside. */
const outside = ({ holdsFrom, holdsTo }: Opening, width: Inches): number =>
  Math.max(holdsFrom - width, width - holdsTo);

/**
 * The verdict on a gate as it was set: at the top and at the bottom, the gap that results, how true
 * the posts stand, and the remedies in order. Null where nothing was set, and for a gap.
 */
export const setOf = (site: Site, gate: Gate): SetResult | null => {
  const set = setCase(site, gate);
  if (set === null) return null;
  const { opening, asSet } = set;
  const widths = set.widths.map((width, n): SetWidth => ({
    at: n === 0 ? 'top' : 'bottom',
    width,
    gap: gapAt(opening, width),
  }));
  const [governs] = widths.toSorted(
    (a, b) =>
      severity[b.gap.verdict] - severity[a.gap.verdict] ||
      b.gap.by - a.gap.by ||
      outside(opening, b.width) - outside(opening, a.width),
  );
  if (governs === undefined) return null;
  const { top, bottom, leans } = asSet;
  return {
    opening,
    widths,
    governs,
    outOfParallel: bottom === null ? null : inches(top - bottom),
    leans,
    remedies: remediesFor(set),
  };
};
