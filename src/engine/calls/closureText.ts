import { formatCount } from '../../units/formatArea.ts';
import { formatBearing } from '../../units/formatBearing.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Traverse } from './traverse.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

/**
 * How calls close, in one line: where they end seen from where they begin, and what share of the
 * perimeter that is; calls that close exactly have no such figure, and where there are none it says so.
 */
export const closureText = (told: Traverse, style: LengthStyle): string => {
  const { closes, courses, precision, misclosure } = told;
  if (courses.length === 0) return phrase`There are no calls that could close.`;
  const { lat, dep, length, azimuth } = misclosure;
  if (closes === 'exactly' || azimuth === null) return phrase`They close exactly.`;
  const write = (of: number): string => formatLength(inches(Math.abs(of)), style);
  const parts = joined(
    [
      lat < 0 ? phrase`${write(lat)} south` : phrase`${write(lat)} north`,
      dep < 0 ? phrase`${write(dep)} west` : phrase`${write(dep)} east`,
    ],
    ', ',
  );
  const off = phrase`They end ${write(length)} ${formatBearing(azimuth)} of where they begin (${parts})`;
  return precision === null
    ? joined([off, '.'], '')
    : phrase`${off}: precision 1:${formatCount(precision)}.`;
};
