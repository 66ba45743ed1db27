import { slopeAt } from '../../engine/ground/gradeLine.ts';
import type { Profile, ProfilePart, ProfileStation } from '../../engine/ground/profile.ts';
import { profileHeight } from '../../engine/ground/profileHeight.ts';
import type { RunGround } from '../../engine/layout.ts';
import type { Post, Posts } from '../../engine/post.ts';
import { stationInPlan } from '../../engine/posts/stationInPlan.ts';
import type { Piece } from '../../geometry/throughCapsule.ts';
import { slack, spot } from '../../geometry/tolerance.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { gradePieces } from './gradePieces.ts';
import { stopsOf, type TapePiece } from './tapePiece.ts';
import { xAt, type TapeReach } from './tapeReach.ts';

/** A place of a profile: paper inches from the left of the strip, and a height in inches. */
export interface Height {
  readonly x: number;
  readonly z: Inches;
}

/** A post on its ground. */
export interface PostStanding extends Height {
  readonly post: Post;
  readonly top: Inches;
}

/** What the profile of one piece shows; heights in inches over the datum, the rest as on the strip. */
export interface ProfileView {
  /** The ground as far as it is known. */
  readonly ground: readonly (readonly Height[])[];
  /** Where it is not; paper inches from the left. */
  readonly unknown: readonly Piece[];
  /** Posts on known ground. */
  readonly posts: readonly PostStanding[];
  /** Bottom and top of the fabric, stretch by stretch. */
  readonly fabric: readonly {
    readonly bottom: readonly Height[];
    readonly top: readonly Height[];
  }[];
  /** The two posts of each gate, where both stand on known ground. */
  readonly openings: readonly (readonly [PostStanding, PostStanding])[];
  /** The ground as few even grades, rise over run. */
  readonly grades: readonly {
    readonly from: Height;
    readonly to: Height;
    readonly grade: number;
  }[];
}

/** The known parts of a profile between two stations, with their ends there. */
const knownWithin = (profile: Profile, from: number, to: number): ProfileStation[][] =>
  profile.known.flatMap((stations) => {
    const start = Math.max(from, stations.at(0)?.at ?? Infinity);
    const end = Math.min(to, stations.at(-1)?.at ?? -Infinity);
    if (end - start < spot) return [];
    const inner = stations.filter(({ at }) => at > start + slack && at < end - slack);
    const edge = (at: number): ProfileStation => ({
      at: inches(at),
      z: profileHeight({ known: [stations] }, inches(at)) ?? inches(0),
    });
    return [[edge(start), ...inner, edge(end)]];
  });

const unknownWithin = ({ unknown }: Profile, from: number, to: number): Piece[] =>
  unknown
    .map((gap) => ({ from: Math.max(from, gap.from), to: Math.min(to, gap.to) }))
    .filter((gap) => gap.to - gap.from > spot);

/** The fabric of the bays between two stations. */
const fabricWithin = ({ fences }: RunGround, from: number, to: number) =>
  fences
    .map(({ bays }) => bays.filter((bay) => bay.from.at > from - spot && bay.to.at < to + spot))
    .filter((bays) => bays.length > 0)
    .map((bays) => {
      const ends = bays.flatMap((bay) =>
        [bay.from, bay.to].map(({ at, z }) => ({ at, z, plumb: bay.plumb })),
      );
      return {
        bottom: ends.map(({ at, z }): ProfileStation => ({ at, z })),
        top: ends.map(({ at, z, plumb }): ProfileStation => ({ at, z: inches(z + plumb) })),
      };
    });

const standingsOf = (
  piece: TapePiece,
  profile: Profile,
  reach: TapeReach,
  posts: Posts,
): (PostStanding | null)[] =>
  stopsOf(piece).map(({ post: id, station }) => {
    const post = posts.get(id);
    const z = profileHeight(profile, stationInPlan(piece.run, station));
    if (post === undefined || z === null) return null;
    return { post, x: xAt(reach, station), z, top: inches(z + post.above) };
  });

const gatesOf = (piece: TapePiece, standings: readonly (PostStanding | null)[]) =>
  stopsOf(piece).flatMap(({ next }, n): (readonly [PostStanding, PostStanding])[] => {
    const [from, to] = [standings[n], standings[n + 1]];
    return next?.kind === 'gate' && from && to ? [[from, to]] : [];
  });

/** What is known of the ground under a piece and stands on it, at the places of the tape over it. */
export const profileView = (piece: TapePiece, reach: TapeReach, posts: Posts): ProfileView => {
  const { ground } = piece.run;
  if (ground === null) {
    const unknown = [{ from: reach.x, to: xAt(reach, reach.to) }];
    return { ground: [], unknown, posts: [], fabric: [], openings: [], grades: [] };
  }
  const { profile, grade } = ground;
  const [from, to] = [reach.from, reach.to].map((at) => stationInPlan(piece.run, at));
  const within = [from ?? 0, to ?? 0] as const;
  const onStrip = (at: number): number => xAt(reach, slopeAt(grade, inches(at)));
  const placed = ({ at, z }: ProfileStation): Height => ({ x: onStrip(at), z });
  const known = knownWithin(profile, ...within);
  const standings = standingsOf(piece, profile, reach, posts);
  return {
    ground: known.map((stations) => stations.map(placed)),
    unknown: unknownWithin(profile, ...within).map((gap) => ({
      from: onStrip(gap.from),
      to: onStrip(gap.to),
    })),
    posts: standings.filter((one) => one !== null),
    fabric: fabricWithin(ground, ...within).map(({ bottom, top }) => ({
      bottom: bottom.map(placed),
      top: top.map(placed),
    })),
    openings: gatesOf(piece, standings),
    grades: known.flatMap(gradePieces).map((part: ProfilePart) => ({
      from: placed(part.from),
      to: placed(part.to),
      grade: part.grade,
    })),
  };
};
