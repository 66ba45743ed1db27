import { heightZoneLimits, type HeightZoneLimits } from './heightZoneLimits.ts';

type Limits = Pick<HeightZoneLimits, 'solid' | 'open'>;

const first = (of: keyof typeof heightZoneLimits): Limits => {
  const [{ solid, open }] = heightZoneLimits[of];
  return { solid, open };
};

/** How high fence may stand in new ground of either kind, inches over it, until somebody says what the local code has. */
export const usualHeights: Readonly<Record<keyof typeof heightZoneLimits, Limits>> = {
  'sight triangle': first('sight triangle'),
  'front yard': first('front yard'),
};
