import type { Inches } from '../../units/inches.ts';
import type { Parsed } from '../../units/parsed.ts';
import type { Radians } from '../../units/radians.ts';

interface Place {
  /** Where it begins in its text, and where what follows it begins. */
  readonly at: number;
  readonly end: number;
}

/** Something in a call that can be reckoned with. */
export type Figure = Place &
  (
    | {
        readonly kind: 'bearing';
        /** Clockwise from north; or why it is none. */
        readonly azimuth: Parsed<Radians>;
      }
    | { readonly kind: 'angle'; readonly angle: Parsed<Radians> }
    | { readonly kind: 'length'; readonly length: Inches }
    /** A number without a unit. */
    | { readonly kind: 'number'; readonly value: number }
  );

export type FigureOf<Kind extends Figure['kind']> = Extract<Figure, { readonly kind: Kind }>;

/** The figures of one kind, in their order. */
export const figuresOf = <Kind extends Figure['kind']>(
  figures: readonly Figure[],
  kind: Kind,
): readonly FigureOf<Kind>[] =>
  figures.filter((figure): figure is FigureOf<Kind> => figure.kind === kind);
