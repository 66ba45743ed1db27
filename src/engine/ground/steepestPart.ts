import { partsOf, type Profile, type ProfilePart } from './profile.ts';

/** The steepest straight part of a profile, up or down, the first of equals; null if none is known. */
export const steepestPart = (profile: Pick<Profile, 'known'>): ProfilePart | null =>
  partsOf(profile).reduce<ProfilePart | null>(
    (most, part) => (most === null || Math.abs(part.grade) > Math.abs(most.grade) ? part : most),
    null,
  );
