import type { Track } from '../geometry/track.ts';
import type { FenceLine } from './fenceLine.ts';
import { legGround } from './legGround.ts';
import type { DrawnLeg } from './legsOf.ts';
import type { Site } from './site.ts';

/** How a leg of a line runs on the ground, from its start to its end: straight, or along its arc. */
export const legTrack = (
  site: Site,
  { curved }: Pick<FenceLine, 'curved'>,
  leg: DrawnLeg,
): Track<'site'> => ({ ...legGround(site, leg), bow: curved[leg.id] ?? 0 });
