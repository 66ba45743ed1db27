declare const space: unique symbol;

/** A point in one of the spaces; a point of one is not a point of another. */
export type Point<Space extends string> = {
  readonly x: number;
  readonly y: number;
  readonly [space]?: Space;
};

/** On the ground: inches, x east, y north. */
export type SitePoint = Point<'site'>;
/** On the sheet: inches, x to the right, y down. */
export type PaperPoint = Point<'paper'>;
/** On the screen: CSS pixels, x to the right, y down. */
export type ScreenPoint = Point<'screen'>;
/** On a picture: its pixels, x to the right, y down, 0, 0 at its upper left corner. */
export type PicturePoint = Point<'picture'>;
