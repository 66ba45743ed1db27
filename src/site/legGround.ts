import type { Segment } from '../geometry/segment.ts';
import { entry } from './entry.ts';
import type { FenceLine } from './fenceLine.ts';
import type { VertexId } from './ids.ts';
import { legsOf } from './legsOf.ts';
import type { DrawnLeg } from './legsOf.ts';
import { quoted } from './quoted.ts';
import type { Site } from './site.ts';
import { phrase } from '../phrases/phrase.ts';

/** Where a leg lies on the ground, from its start to its end. */
export const legGround = (site: Site, leg: Pick<DrawnLeg, 'start' | 'end'>): Segment<'site'> => ({
  start: entry(site, 'marks', leg.start),
  end: entry(site, 'marks', leg.end),
});

/** The leg of a line that starts at a vertex. RangeError with one line when none does. */
export const legAt = (line: FenceLine, id: VertexId): DrawnLeg => {
  const leg = legsOf(line).find((drawn) => drawn.id === id);
  if (leg !== undefined) return leg;
  throw new RangeError(phrase`leg: expected the start of a leg of this line, found ${quoted(id)}`);
};
