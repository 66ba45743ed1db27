import { inches, type Inches } from '../../units/inches.ts';
import { profileHeight } from './profileHeight.ts';
import type { Profile, ProfileStation } from './profile.ts';

/** A place where the grade changes, as rise over run in plan. */
export interface GradeBreak {
  readonly at: Inches;
  readonly before: number;
  readonly after: number;
  /** After less before: above 0 in a dip, below 0 on a crest. */
  readonly change: number;
}

/** What counts as an abrupt change. */
export interface AbruptChange {
  /** The grade is taken over so far on each side, inches; above 0. */
  readonly reach: Inches;
  /** A change of more than this counts: 0.15 is 15 in 100. */
  readonly limit: number;
}

const breakAt = (stations: readonly ProfileStation[], at: number, reach: Inches): GradeBreak[] => {
  const known = [stations];
  const [low, middle, high] = [at - reach, at, at + reach].map((place) =>
    profileHeight({ known }, inches(place)),
  );
  if (low == null || middle == null || high == null) return [];
  const [before, after] = [(middle - low) / reach, (high - middle) / reach];
  return [{ at: inches(at), before, after, change: after - before }];
};

const changesOf = (stations: readonly ProfileStation[], reach: Inches): GradeBreak[] =>
  stations.flatMap(({ at }) => breakAt(stations, at, reach));

const greater = (a: GradeBreak, b: GradeBreak): number =>
  Math.abs(b.change) - Math.abs(a.change) || a.at - b.at;

/**
 * The stations where the grade changes abruptly, rising along the profile: where the grade over a
 * reach ahead differs from that over a reach behind by more than the limit, and by more than
 * anywhere nearer than a reach. So a break that the triangles spread over some inches is one. None
 * nearer than a reach to an end of what is known: a terminal post stands there, or nobody knows.
 */
export const gradeBreaks = (
  { known }: Pick<Profile, 'known'>,
  { reach, limit }: AbruptChange,
): GradeBreak[] => {
  const taken: GradeBreak[] = [];
  const abrupt = known
    .flatMap((stations) => changesOf(stations, reach))
    .filter(({ change }) => Math.abs(change) > limit)
    .sort(greater);
  for (const one of abrupt) {
    if (taken.every(({ at }) => Math.abs(at - one.at) >= reach)) taken.push(one);
  }
  return taken.sort((a, b) => a.at - b.at);
};

/** The greatest change of grade of a profile, up or down; null where none can be told. */
export const greatestBreak = (
  { known }: Pick<Profile, 'known'>,
  reach: Inches,
): GradeBreak | null =>
  known
    .flatMap((stations) => changesOf(stations, reach))
    .sort(greater)
    .at(0) ?? null;
