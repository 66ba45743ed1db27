import type { SitePoint } from '../geometry/point.ts';
import type { Radians } from '../units/radians.ts';
import type { Ink } from './ink.ts';
import type { PenName } from './pens.ts';

/**
 * The drawing before it has a scale: things on the ground (inches, y north) with pens by name.
 * `explode` turns them into atoms; only there is decided where ticks and letters go.
 */
export type Primitive =
  | {
      readonly kind: 'polyline';
      readonly points: readonly SitePoint[];
      readonly closed: boolean;
      readonly pen: PenName;
    }
  | {
      readonly kind: 'area';
      readonly points: readonly SitePoint[];
      readonly ink: Ink;
      readonly opacity: number;
      readonly hatch: 'none' | 'diagonal' | 'cross';
    }
  /** `radius` in inches on the ground; `least` is the smallest radius on paper, in paper inches. */
  | {
      readonly kind: 'circle';
      readonly centre: SitePoint;
      readonly radius: number;
      readonly least: number;
      readonly pen: PenName | null;
      readonly ink: Ink | null;
    }
  | {
      readonly kind: 'arc';
      readonly centre: SitePoint;
      readonly radius: number;
      readonly start: Radians;
      readonly sweep: Radians;
      readonly pen: PenName;
    }
  /** Wire fence as the drafting standards draw it: long dashes with an x between. */
  | {
      readonly kind: 'fence';
      readonly points: readonly SitePoint[];
      readonly closed: boolean;
      readonly pen: PenName;
    }
  /** `size` and `rise` (up from the point, square to the text) in paper inches. */
  | {
      readonly kind: 'text';
      readonly at: SitePoint;
      readonly text: string;
      readonly size: number;
      readonly rise: number;
      readonly angle: Radians;
      readonly ink: Ink;
      readonly weight: 'regular' | 'bold';
    }
  /** A chain of dimensions along a straight line, `off` paper inches to the left of its direction. */
  | {
      readonly kind: 'dimension chain';
      readonly points: readonly SitePoint[];
      readonly texts: readonly string[];
      readonly total: string | null;
      readonly off: number;
    }
  | {
      readonly kind: 'flag';
      readonly at: SitePoint;
      readonly level: 'stop' | 'settle' | 'caution';
    };
