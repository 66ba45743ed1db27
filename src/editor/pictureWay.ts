/**
 * How points of a picture say where it lies: two points a known distance apart, the corners of a
 * rectangle with known sides, two points and the places that they show, four of those.
 */
export type PictureWay = 'distance' | 'rectangle' | 'two places' | 'four places';
