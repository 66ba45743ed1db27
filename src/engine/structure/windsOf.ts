import type { Conditions } from '../../site/conditions.ts';
import { exposureAt, exposures } from '../../trade/windTerms.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Wind } from './velocityPressure.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How open the land is where nobody has said. */
const usualExposure = 'C';

/** One wind that a place is to be built for, and what it is called: lengths in it are for the caller to write. */
export interface NamedWind {
  readonly nameWith: (say: (length: Inches) => string) => string;
  readonly wind: Wind;
}

/**
 * The winds that somebody has told of: the basic one, and the one that blows on ice; each at the top of a fence
 * that is so many inches over the ground.
 */
export const windsOf = (
  { wind, ice }: Pick<Conditions, 'wind' | 'ice'>,
  top: Inches,
): NamedWind[] => {
  const name = wind?.exposure ?? usualExposure;
  const open = exposures.find((one) => one.name === name);
  const exposure = open === undefined ? NaN : exposureAt(open, top);
  const named = (speed: number, thick: Inches): NamedWind => ({
    nameWith: (say) =>
      phrase`${speed} mph${thick > 0 ? phrase` on ${say(thick)} of ice` : ''}, exposure ${name}`,
    wind: { speed, exposure, ice: thick },
  });
  return [
    ...(wind === null ? [] : [named(wind.speed, inches(0))]),
    ...(ice === null ? [] : [named(ice.speed, inches(ice.thickness))]),
  ];
};
