import type { PicturePoint, SitePoint } from '../../../geometry/point.ts';
import type { UnderlayId } from '../../../site/ids.ts';
import type { Inches } from '../../../units/inches.ts';
import type { PictureWay } from '../../pictureWay.ts';
import type { Pointer } from '../../pointer.ts';

/** Points are being set, on the picture and, where it is laid by places, each with the place it shows. */
export interface Marking {
  readonly is: 'marking';
  readonly id: UnderlayId;
  readonly way: PictureWay;
  readonly seen: readonly PicturePoint[];
  readonly shown: readonly SitePoint[];
  readonly pointer: Pointer;
  /** Whether the hand is down: a point is set where it lifts. */
  readonly down: boolean;
}

/** A length is asked: how far two points are apart, or one side after the other of a rectangle. */
export interface Asking {
  readonly is: 'asking';
  readonly id: UnderlayId;
  readonly way: 'distance' | 'rectangle';
  readonly seen: readonly PicturePoint[];
  /** The sides that were typed already. */
  readonly sides: readonly Inches[];
  /** Where it is asked. */
  readonly at: SitePoint;
  readonly reads: Inches | null;
}

/**
 *   idle --press on a picture or its knob--> held --release--> idle, that picture or the next one selected
 *   held --move beyond reach--> moving --move--> moving --release--> idle, the picture laid elsewhere
 *   any --begin--> marking --press, release--> marking, a point more
 *   marking --last point--> asking, where a length is wanted; else idle, the picture laid
 *   asking --type--> asking --finish--> asking, for the next side; idle, the picture laid
 *   marking, asking --back--> marking, a point less;  any --leave--> idle
 */
export type PictureState =
  | { readonly is: 'idle' }
  | {
      readonly is: 'held' | 'moving';
      readonly id: UnderlayId;
      readonly from: SitePoint;
      /** By its knob it is turned and not moved. */
      readonly by: 'itself' | 'knob';
      /** What a tap selects. */
      readonly next: UnderlayId;
    }
  | Marking
  | Asking;

export const idle: PictureState = { is: 'idle' };

/** How many points of the picture each way wants. */
export const pointsOf: Readonly<Record<PictureWay, 2 | 4>> = {
  distance: 2,
  rectangle: 4,
  'two places': 2,
  'four places': 4,
};
