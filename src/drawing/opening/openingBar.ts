import type { Opening } from '../../engine/opening.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Atom } from '../atom.ts';
import { moveAtoms } from '../moveAtoms.ts';
import { openingParts, partLevels } from './openingParts.ts';
import { openingRuler, type Marks } from './openingRuler.ts';

/** Paper inches: how wide the bar is drawn, and the widths it shows beside the target. */
export interface BarOptions extends Marks {
  readonly width: number;
  readonly style: LengthStyle;
}

/** A drawn opening bar and the room it takes, paper inches. */
export interface OpeningBar {
  readonly atoms: readonly Atom[];
  readonly width: number;
  readonly height: number;
}

/** From the middle of the outermost texts of the ruler to what stands over and under it. */
const beyond = 0.1;

/** A ruler moved up under the parts, as high as the rows of text that it takes. */
const tightly = (ruler: readonly Atom[]): Pick<OpeningBar, 'atoms' | 'height'> => {
  const rows = ruler.flatMap((atom) => (atom.do === 'text' ? [atom.at.y] : []));
  const lead = Math.min(...rows) - beyond;
  return {
    atoms: moveAtoms(ruler, 0, partLevels.end - lead),
    height: partLevels.end + Math.max(...rows) - lead + beyond,
  };
};

/** Nothing hangs in a gap: there is no width at which it holds, and no ruler before it is set. */
const isBare = ({ terms }: Opening, { set = [] }: Marks): boolean =>
  set.length === 0 && terms.every(({ role }) => role === 'gap');

/**
 * An opening from post face to post face: what stands in it, stretched so that hinge and gap can
 * be seen, over a ruler that shows where the opening holds, the target, and how the nominal or the
 * set width compares. A gap has no ruler before it is set.
 */
export const openingBar = (
  opening: Opening,
  { width, style, ...marks }: BarOptions,
): OpeningBar => {
  const parts = openingParts(opening, width, fineStyle(style));
  if (isBare(opening, marks)) return { atoms: parts, width, height: partLevels.end };
  const ruler = tightly(openingRuler(opening, fineStyle(style), { ...marks, width }));
  return { atoms: [...parts, ...ruler.atoms], width, height: ruler.height };
};
