import { phrase } from '../phrases/phrase.ts';
const grouped = (text: string): string => text.replace(/\B(?=(?:\d{3})+(?!\d))/g, ',');

const squareFoot = 144;
const acre = 43_560 * squareFoot;
const squareMetre = 1 / 0.0254 ** 2;

/** A count or a size with commas at its thousands, whole: `12,116`. */
export const formatCount = (value: number): string => grouped(value.toFixed(0));

/**
 * A finite area of zero or more, given in square inches, in every unit that land is told in:
 * `102,936 sq ft, 2.363 acres, 9,563.0 m²`. An acre is 43,560 sq ft (10 square chains).
 */
export const formatArea = (area: number): string => {
  const metres = (area / squareMetre).toFixed(1).split('.');
  return phrase`${formatCount(area / squareFoot)} sq ft, ${(area / acre).toFixed(3)} acres, ${grouped(metres[0] ?? '')}.${metres[1] ?? ''} m²`;
};
