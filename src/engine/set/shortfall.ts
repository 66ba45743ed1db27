import { slack } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Opening } from '../opening.ts';

/** Where an opening holds for sure; inches. */
export type Held = Pick<Opening, 'holdsFrom' | 'holdsTo'>;

/** What widths lack to hold for sure: `room` for the leaves, or something to `take up` what is over. */
export interface Shortfall {
  readonly way: 'room' | 'take up';
  /** In inches; 0 or less where nothing is missing. */
  readonly by: Inches;
}

/** The worse of what the narrowest of some widths (inches) lacks and what the widest has over. */
export const shortfallOf = (held: Held, widths: readonly Inches[]): Shortfall => {
  const short = held.holdsFrom - Math.min(...widths);
  const over = Math.max(...widths) - held.holdsTo;
  return short >= over ? { way: 'room', by: inches(short) } : { way: 'take up', by: inches(over) };
};

/** Whether an opening holds for sure at every width, inches. */
export const holdsAt = (held: Held, widths: readonly Inches[]): boolean =>
  shortfallOf(held, widths).by <= slack;

/** Whether it does once every width has so much more room, or so much more is taken up. */
export const holdsShifted = (
  held: Held,
  widths: readonly Inches[],
  { way, by }: Shortfall,
): boolean =>
  holdsAt(
    held,
    widths.map((width) => inches(way === 'room' ? width + by : width - by)),
  );

/** How much further one opening reaches than another the way that something is missing; inches. */
export const gained = (before: Held, after: Held, way: Shortfall['way']): Inches =>
  inches(way === 'room' ? before.holdsFrom - after.holdsFrom : after.holdsTo - before.holdsTo);
