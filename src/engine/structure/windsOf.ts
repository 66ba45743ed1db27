import type { Conditions } from '../../site/conditions.ts';
import { exposures } from '../../trade/windTerms.ts';
import { inches } from '../../units/inches.ts';
import type { Wind } from './velocityPressure.ts';

/** How open the land is where nobody has said. */
const usualExposure = 'C';

/** One wind that a place is to be built for, and what it is called. */
export interface NamedWind {
  readonly name: string;
  readonly wind: Wind;
}

const named = (speed: number, exposure: string, ice: number): NamedWind => ({
  name: `${speed} mph${ice > 0 ? ` on ${Number(ice.toFixed(2))} in of ice` : ''}, exposure ${exposure}`,
  wind: {
    speed,
    exposure: exposures.find(({ name }) => name === exposure)?.coefficient ?? NaN,
    ice: inches(ice),
  },
});

/** The winds that somebody has told of: the basic one, and the one that blows on ice. */
export const windsOf = ({ wind, ice }: Pick<Conditions, 'wind' | 'ice'>): NamedWind[] => {
  const exposure = wind?.exposure ?? usualExposure;
  return [
    ...(wind === null ? [] : [named(wind.speed, exposure, 0)]),
    ...(ice === null ? [] : [named(ice.speed, exposure, ice.thickness)]),
  ];
};
