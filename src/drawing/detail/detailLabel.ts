import type { PaperPoint } from '../../geometry/point.ts';
import type { Radians } from '../../units/radians.ts';
import type { LabelStyle } from '../lettering/label.ts';
import { letters } from '../sheet/letters.ts';

/** A place for a text: its middle on the paper, inches, and how it is turned. */
export interface LabelPlace {
  readonly at: PaperPoint;
  readonly angle: Radians;
}

/** A text of a detail with the places it may stand at, the most wished for first. */
export interface DetailLabel {
  readonly look: LabelStyle;
  readonly places: readonly LabelPlace[];
  /** What is not said elsewhere on the card has to be told of where it finds no place. */
  readonly need: 'must' | 'may';
}

/** How the texts of a detail are lettered: capitals 2.5 mm high. */
export const detailLook = (text: string, weight: LabelStyle['weight'] = 'regular'): LabelStyle => ({
  text,
  size: letters.body,
  weight,
  ink: 'text',
});
