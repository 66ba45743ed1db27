import { radius95 } from '../../engine/walk/radius95.ts';
import type { Observation } from '../../site/observation.ts';
import type { Site } from '../../site/site.ts';
import type { Primitive } from '../primitive.ts';

/** Round each place that was found by satellites the circle that holds it 95 times in 100. */
export const drawFixes = (site: Site): readonly Primitive[] =>
  Object.values<Observation>(site.observations).flatMap((seen): Primitive[] =>
    seen.kind === 'fix'
      ? [
          {
            kind: 'circle',
            centre: { x: seen.x, y: seen.y },
            radius: radius95(seen.accuracy),
            least: 0,
            pen: 'accuracy',
            ink: null,
          },
        ]
      : [],
  );
