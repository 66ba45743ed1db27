import { sum, inches, type Inches } from '../../units/inches.ts';
import { partsOf, type Profile } from './profile.ts';

/**
 * The length of a profile measured parallel to the grade, as ASTM F567 4.1 spaces posts; inches,
 * exact for the ground's triangles. Null where a part of it is outside of the shots.
 */
export const slopeLength = (profile: Profile): Inches | null => {
  if (profile.unknown.length > 0) return null;
  return sum(
    partsOf(profile).map(({ from, to }) => inches(Math.hypot(to.at - from.at, to.z - from.z))),
  );
};
