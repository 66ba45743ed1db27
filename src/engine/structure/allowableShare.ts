import { allowableWind, allowableWindOnIce } from '../../trade/windTerms.ts';
import type { Wind } from './velocityPressure.ts';

/** What a wind at strength level counts for where allowable stresses are used: more where it blows on ice. */
export const allowableShare = ({ ice }: Pick<Wind, 'ice'>): number =>
  (ice ?? 0) > 0 ? allowableWindOnIce : allowableWind;
