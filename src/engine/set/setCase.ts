import type { AsSet } from '../../site/asSet.ts';
import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { lengthOfSteps } from '../../units/lengthOfSteps.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { openingOf } from '../gate/openingOf.ts';
import type { Opening } from '../opening.ts';
import { termsAsSet } from './termsAsSet.ts';

/** A gate between posts as they were set: all that a remedy is worked out from. Lengths in inches. */
export interface SetCase {
  readonly site: Site;
  readonly gate: Gate;
  readonly asSet: AsSet;
  /** The opening with what was measured on site. */
  readonly opening: Opening;
  /** Between the posts at the top and, where it was measured, at the bottom. */
  readonly widths: readonly Inches[];
}

/** The case of a gate that was set; null for one that was not, and for a gap: nothing hangs in it. */
export const setCase = (site: Site, gate: Gate): SetCase | null => {
  const { asSet, way } = gate;
  if (asSet === null || way.kind === 'gap') return null;
  const opening = openingOf(termsAsSet(gate, site, asSet));
  const { top, bottom } = asSet;
  return { site, gate, asSet, opening, widths: bottom === null ? [top] : [top, bottom] };
};

/**
 * How what was set is written: as openings are on the site, in sixteenths at least, to which a tape
 * is read when posts are set (common practice, no published source).
 */
const setStyle = ({ lengths }: Pick<Site, 'lengths'>): LengthStyle => {
  const fine = fineStyle(lengths);
  return fine.fraction < 16 ? { ...fine, fraction: 16 } : fine;
};

/** Writes a length (inches, either sign) as what was set is written on a site. */
export const writer =
  ({ site }: { readonly site: Pick<Site, 'lengths'> }) =>
  (length: number): string =>
    formatLength(inches(length), setStyle(site));

/** A length of zero or more, inches, up or down to the marks of the tape that a site writes. */
export const onTape = (
  { site }: Pick<SetCase, 'site'>,
  length: number,
  to: 'floor' | 'ceil',
): Inches => {
  const step = lengthOfSteps(1, setStyle(site));
  // a millionth of a step is rounding of metric sums, not one more mark
  const dust = to === 'ceil' ? -1e-6 : 1e-6;
  return inches(Math[to](length / step + dust) * step);
};
