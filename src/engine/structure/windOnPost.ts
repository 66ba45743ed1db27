import type { Conditions } from '../../site/conditions.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import type { PipeGrade } from '../../trade/steel.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { allowedBay } from './allowedBay.ts';
import type { Member } from './bendingCapacity.ts';
import { postInWind, type PostInWind } from './postInWind.ts';
import { solidAtMost } from './solidAtMost.ts';
import { steelOf } from './steelOf.ts';
import { windFenceOf } from './windFenceOf.ts';
import { windsOf, type NamedWind } from './windsOf.ts';

type Told = Pick<Conditions, 'wind' | 'ice'>;

/** The wind of a place that bends a post the most, and what the post bears. Lengths in inches. */
export interface WindOnPost extends PostInWind {
  /** The wind in words, with its lengths as they are written. */
  readonly nameWith: NamedWind['nameWith'];
  readonly solidity: number;
  readonly steel: PipeGrade['label'];
}

/** Why a post is not compared with its wind. */
export type Uncompared = 'too solid' | 'square';

/** Whether a post is compared with a wind. */
export const isCompared = (wind: WindOnPost | Uncompared | null): wind is WindOnPost =>
  wind !== null && typeof wind === 'object';

const topOf = ({ gapUnder, fabricHeight }: FenceSpec): Inches => inches(gapUnder + fabricHeight);

const memberOf = (spec: FenceSpec, pipe: PostPipe): Member => {
  const { od, wall } = solidAtMost(pipe);
  return { od, wall, yields: steelOf(spec, pipe).yields };
};

/**
 * The longest bay of a build in every wind that is told, inches; null where nobody has told of any, and
 * where the fabric, with its ice, is more solid than the table of open frames goes, and for posts that are no
 * pipe.
 */
export const bayInWind = (spec: FenceSpec, told: Told): Inches | null => {
  if (spec.linePost.section === 'square') return null;
  const [fence, member] = [windFenceOf(spec), memberOf(spec, spec.linePost)];
  const bays = windsOf(told, topOf(spec)).map(({ wind }) => allowedBay(fence, member, wind));
  if (bays.length === 0 || bays.includes(null)) return null;
  return inches(Math.min(...bays.map((bay) => bay ?? 0)));
};

/**
 * What the winds of a place do to a post of a build that holds so many inches of fence; null where nobody
 * has told of any. `square` for a post that is no pipe; `too solid` where slats, a screen or ice leave more solid than the table of open frames
 * goes. Fabric that pulls on a terminal along the fence is for its brace, and is not counted.
 */
export const windOnPost = (
  spec: FenceSpec,
  told: Told,
  { pipe, wide }: { readonly pipe: PostPipe; readonly wide: Inches },
): WindOnPost | Uncompared | null => {
  if (windsOf(told, topOf(spec)).length === 0) return null;
  if (pipe.section === 'square') return 'square';
  const [fence, member] = [windFenceOf(spec), memberOf(spec, pipe)];
  const found = windsOf(told, topOf(spec)).map(({ nameWith, wind }) => ({
    nameWith,
    on: postInWind(fence, member, { wind, bay: wide }),
  }));
  if (found.some(({ on }) => on === null)) return 'too solid';
  const [worst] = found
    .flatMap(({ nameWith, on }) => (on === null ? [] : [{ ...on, nameWith }]))
    .toSorted((a, b) => b.bends - a.bends);
  if (worst === undefined) return null;
  return { ...worst, solidity: worst.wind.solidity, steel: steelOf(spec, pipe).label };
};
