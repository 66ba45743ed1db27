import type { Primitive } from '../../../drawing/primitive.ts';
import type { WalkPlace } from './walkPlace.ts';

/** Where the walk is on the pad: a dot, and the circle that holds it 95 times in 100. */
export const walkMarks = ({ at, radius, away }: WalkPlace): Primitive[] =>
  away === null
    ? [
        { kind: 'circle', centre: at, radius, least: 0, pen: 'here', ink: null },
        { kind: 'circle', centre: at, radius: 0, least: 0.09, pen: null, ink: 'paper' },
        { kind: 'circle', centre: at, radius: 0, least: 0.06, pen: null, ink: 'selected' },
      ]
    : [];
