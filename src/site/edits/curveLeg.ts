import { distance } from '../../geometry/distance.ts';
import { moveAnchorOnto } from '../anchor.ts';
import { withAnchored } from '../anchoredOn.ts';
import { entry } from '../entry.ts';
import type { LineId, VertexId } from '../ids.ts';
import { legAt, legGround } from '../legGround.ts';
import { legTrack } from '../legTrack.ts';
import { quoted } from '../quoted.ts';
import type { Site } from '../site.ts';
import { inches } from '../../units/inches.ts';
import { withEntry } from '../withEntries.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A leg of a line, and how far off its chord its middle is to be: left above 0, straight at 0; inches. */
export interface LegBow {
  readonly line: LineId;
  readonly leg: VertexId;
  readonly bow: number;
}

/** So many chords off is all but a full circle. Ours, no published source. */
const mostBow = 4;

/**
 * Bows a leg into an arc between its two marks, or makes it straight again. Gates and pins on it stay
 * at the place of the leg that is nearest to where they were. RangeError for an unknown line or leg, a
 * leg whose marks are on one spot, and a bow of more than four chords.
 */
export const curveLeg = (site: Site, { line: id, leg, bow }: LegBow): Site => {
  const line = entry(site, 'lines', id);
  const drawn = legAt(line, leg);
  const { start, end } = legGround(site, drawn);
  const chord = distance(start, end);
  if (bow !== 0 && !(Math.abs(bow) <= mostBow * chord)) {
    throw new RangeError(
      phrase`lines › ${id} › leg › ${leg}: expected a middle ordinate of at most ${mostBow} times the chord, found ${quoted(bow)}`,
    );
  }
  const others = Object.entries(line.curved).filter(([other]) => other !== leg);
  const curved = bow === 0 ? others : [...others, [leg, inches(bow)] as const];
  const bent = withEntry(site, 'lines', id, { ...line, curved: Object.fromEntries(curved) });
  const [was, now] = [legTrack(site, line, drawn), { start, end, bow }];
  return withAnchored(bent, id, (thing) =>
    thing.leg === leg ? { ...thing, anchor: moveAnchorOnto(thing.anchor, was, now) } : thing,
  );
};
