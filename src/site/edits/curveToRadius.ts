import { distance } from '../../geometry/distance.ts';
import { middleOrdinate } from '../../geometry/middleOrdinate.ts';
import { entry } from '../entry.ts';
import type { LineId, VertexId } from '../ids.ts';
import { legAt, legGround } from '../legGround.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { curveLeg } from './curveLeg.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A leg, the radius that it is to have in inches, and the side of its chord that it bows to. */
export interface LegRadius {
  readonly line: LineId;
  readonly leg: VertexId;
  readonly radius: number;
  readonly side: 'left' | 'right';
}

/**
 * Bows a leg to a radius, to the left or right of the way it runs: half a circle at most, or more than
 * that where it was more before. RangeError for an unknown line or leg, and for a radius of less than
 * half its chord, through whose two marks no circle goes.
 */
export const curveToRadius = (site: Site, { line, leg, radius, side }: LegRadius): Site => {
  const fence = entry(site, 'lines', line);
  const { start, end } = legGround(site, legAt(fence, leg));
  const chord = distance(start, end);
  const lesser = middleOrdinate(radius, chord);
  if (lesser === null) {
    throw new RangeError(
      phrase`lines › ${line} › leg › ${leg}: expected a radius of at least half the chord, ${chord / 2} in, found ${quoted(radius)}`,
    );
  }
  const over = Math.abs(fence.curved[leg] ?? 0) > chord / 2;
  const bow = over ? 2 * radius - lesser : lesser;
  return curveLeg(site, { line, leg, bow: side === 'left' ? bow : -bow });
};
