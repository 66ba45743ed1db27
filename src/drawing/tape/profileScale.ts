import type { Inches } from '../../units/inches.ts';
import { exaggeration } from './exaggeration.ts';
import type { ProfileView } from './profileView.ts';

/** How heights become places on the paper: the base line lies at the lowest ground that is known. */
export interface ProfileScale {
  readonly lowest: Inches;
  /** Of the base line, paper inches from the top of the strip. */
  readonly base: number;
  /** Paper inches for an inch of height. */
  readonly scale: number;
  /** How many times that is the scale of the lengths. */
  readonly times: number;
}

/** Paper inches from the top of the strip. */
export const yAt = ({ lowest, base, scale }: ProfileScale, z: number): number =>
  base - (z - lowest) * scale;

/**
 * The scale of heights of profiles that stand side by side over one base line: `along` paper inches
 * for an inch of length, the highest point at `top`. Null where nothing is known of the ground.
 */
export const profileScale = (
  views: readonly ProfileView[],
  { along, most, top }: { along: number; most: number; top: number },
): ProfileScale | null => {
  const ground = views.flatMap((view) => view.ground.flat().map(({ z }) => z));
  const [first] = ground;
  if (first === undefined) return null;
  const lowest = ground.reduce((low, z) => (z < low ? z : low), first);
  const highest = Math.max(
    ...ground,
    ...views.flatMap(({ posts }) => posts.map((post) => post.top)),
    ...views.flatMap(({ fabric }) => fabric.flatMap((each) => each.top.map(({ z }) => z))),
  );
  const times = exaggeration((highest - lowest) * along, most);
  const scale = along * times;
  return { lowest, base: top + (highest - lowest) * scale, scale, times };
};
