import type { Piece } from '../../geometry/throughCapsule.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { partsOf, type Profile } from './profile.ts';

/**
 * A profile as a tape laid on the ground measures it: stations in plan and, for each, the station
 * parallel to the grade. Both rise; in between they keep step.
 */
export interface GradeLine {
  readonly plan: readonly Inches[];
  readonly slope: readonly Inches[];
  /** Parts outside of the shots: they count as long as they are in plan, since no more is known. */
  readonly unknown: readonly Piece[];
}

interface Run extends Piece {
  readonly rise: number;
}

/** Lays a tape on a profile from its start. */
export const gradeLine = (profile: Profile): GradeLine => {
  const runs: Run[] = [
    ...partsOf(profile).map(({ from, to }) => ({ from: from.at, to: to.at, rise: to.z - from.z })),
    ...profile.unknown.map((piece) => ({ ...piece, rise: 0 })),
  ].sort((a, b) => a.from - b.from);
  const [plan, slope] = [[inches(0)], [inches(0)]];
  let length = 0;
  for (const { from, to, rise } of runs) {
    length += Math.hypot(to - from, rise);
    plan.push(inches(to));
    slope.push(inches(length));
  }
  return { plan, slope, unknown: profile.unknown };
};

/** A tape that is held level over so many inches. */
export const levelLine = (length: Inches): GradeLine => ({
  plan: [inches(0), length],
  slope: [inches(0), length],
  unknown: [],
});

/** The value that belongs to one of `from`, where `to` rises in step with it; ends hold beyond. */
const instep = (at: number, from: readonly Inches[], to: readonly Inches[]): Inches => {
  const next = from.findIndex((value) => value >= at);
  const [low, high] = [from[next - 1], from[next]];
  if (high === undefined) return to.at(-1) ?? inches(0);
  if (low === undefined || high === at) return to[next] ?? inches(0);
  const [start, end] = [to[next - 1] ?? 0, to[next] ?? 0];
  return inches(start + ((end - start) * (at - low)) / (high - low));
};

/** How far along the grade a station in plan is, inches; the ends beyond the ends. */
export const slopeAt = ({ plan, slope }: GradeLine, at: Inches): Inches => instep(at, plan, slope);

/** How far in plan a station along the grade is, inches; the ends beyond the ends. */
export const planAt = ({ plan, slope }: GradeLine, at: Inches): Inches => instep(at, slope, plan);
