import type { SitePoint } from '../geometry/point.ts';
import type { Segment } from '../geometry/segment.ts';
import { trackLength, type Track } from '../geometry/track.ts';
import { alongOf, anchoredAt } from '../site/anchor.ts';
import { legAt } from '../site/legGround.ts';
import { legTrack } from '../site/legTrack.ts';
import type { Pin } from '../site/pin.ts';
import type { Site } from '../site/site.ts';
import { inches, type Inches } from '../units/inches.ts';

/** Where a pin is on the ground. */
export interface PinGround {
  /** The leg that it is on. */
  readonly leg: Track<'site'>;
  readonly length: Inches;
  /** From the start of the leg, inches. */
  readonly station: Inches;
  readonly at: SitePoint;
  /** What is kept clear along the leg; of a post that is held only its place. */
  readonly body: Segment<'site'>;
}

/** Where a pin is on the ground; null when its line is not there. */
export const pinGround = (site: Site, pin: Pin): PinGround | null => {
  const line = site.lines[pin.line];
  if (line === undefined) return null;
  const leg = legTrack(site, line, legAt(line, pin.leg));
  const length = inches(trackLength(leg));
  const station = inches(alongOf(pin.anchor, length));
  const reach = pin.holds.kind === 'clear' ? pin.holds.reach : 0;
  const at = (along: number): SitePoint =>
    anchoredAt({ from: 'start', offset: inches(along) }, leg);
  const body = { start: at(station - reach), end: at(station + reach) };
  return { leg, length, station, at: at(station), body };
};
