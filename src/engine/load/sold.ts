import type { Selling } from '../../trade/selling.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What goes on the truck of a line of the list: packs, and what of them will be left over. */
export interface Sold {
  /** So many of `pack`. */
  readonly count: number;
  readonly pack: string;
  /** Of what was counted, in its unit; spares are among it. */
  readonly left: number;
  /** So many lengths that lie in the yard go on the truck besides: they are not among `count` and `left`. */
  readonly fromYard: number;
  readonly source: string;
}

const nearly = 1e-9;

/** How a counted thing is sold: spares on top, rounded up to packs on the total. */
export const soldIn = (count: number, { pack, spare, source }: Omit<Selling, 'code'>): Sold => {
  const packs = Math.ceil((count * (1 + spare)) / pack.holds - nearly);
  const share = spare === 0 ? '' : phrase`${Number((100 * spare).toFixed(1))} % spare; `;
  return {
    count: packs,
    pack: pack.name,
    left: packs * pack.holds - count,
    fromYard: 0,
    source: `${share}${source.text}`,
  };
};

/** How sticks or rolls of a length are sold: as many as their cuts need. Lengths in inches. */
export const soldAsSticks = (
  {
    bought,
    used,
    stick,
    fromYard,
  }: {
    readonly bought: number;
    /** Of what is bought. */
    readonly used: Inches;
    readonly stick: Inches;
    readonly fromYard: number;
  },
  noun: 'stick' | 'roll',
  style: LengthStyle,
): Sold => ({
  count: bought,
  pack:
    noun === 'stick'
      ? phrase`stick of ${formatLength(stick, style)}`
      : phrase`roll of ${formatLength(stick, style)}`,
  left: inches(Math.max(0, bought * stick - used)),
  fromYard,
  source: phrase`by the cut list`,
});
