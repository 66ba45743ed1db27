import type { SitePoint } from '../../geometry/point.ts';
import type { Polygon } from '../../geometry/polygon.ts';
import type { Piece } from '../../geometry/throughCapsule.ts';
import { slack } from '../../geometry/tolerance.ts';
import { nearestOnTrack, trackAt } from '../../geometry/track.ts';
import { trackInside } from '../../geometry/trackInside.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import { heightAt } from '../ground/heightAt.ts';
import { profileHeight } from '../ground/profileHeight.ts';
import type { LineLayout, Run } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';

/** Fence that stands in a zone, told in the direction of its line. */
export interface ZonedPiece {
  /** Where it begins. */
  readonly start: SitePoint;
  /** In plan, along the curve of a curved one, inches. */
  readonly length: number;
  /** The higher of the tops that its wall has at its two ends, inches over the ground; 0 where it stands on the ground. */
  readonly wall: number;
}

/** Where along a run, in plan, fence or a closed leaf is: from post to post, all but gaps without a leaf. */
const fenced = (run: Run, site: Site, { posts }: LaidLines): Piece[] =>
  run.spaces.flatMap((space, n) => {
    if (space.kind === 'gate' && site.gates[space.gate]?.way.kind === 'gap') return [];
    const [a, b] = [run.posts[n], run.posts[n + 1]].map((stop) => posts.get(stop?.post ?? 'post:'));
    if (a === undefined || b === undefined) return [];
    return [{ from: nearestOnTrack(a.at, run).along, to: nearestOnTrack(b.at, run).along }];
  });

/** How high the top of the wall of a run is over the ground at a place; as on the level where no ground is known. */
const wallOver = (run: Run, along: number, { ground }: LaidLines): number => {
  if (run.wall === null) return 0;
  const top = run.ground === null ? null : profileHeight(run.ground.profile, inches(along));
  const known = [trackAt(run, along), run.start, run.end].map((place) =>
    ground === null ? null : heightAt(ground, place),
  );
  return top === null ? run.wall.height : top - (known.find((height) => height !== null) ?? 0);
};

/**
 * Where the fence of a line passes through a zone, from its start to its end: from post to post, along
 * curves as they run, the closed leaves of its gates from post to post too. A gap without a leaf has none.
 * The edge of the zone belongs to it.
 */
export const zonedFence = (
  line: LineLayout,
  zone: Polygon<'site'>,
  site: Site,
  laid: LaidLines,
): ZonedPiece[] =>
  line.runs.flatMap((run) => {
    const inside = trackInside(run, zone);
    if (inside.length === 0) return [];
    return fenced(run, site, laid).flatMap((fence) =>
      inside.flatMap((piece) => {
        const [from, to] = [Math.max(fence.from, piece.from), Math.min(fence.to, piece.to)];
        if (to - from <= slack) return [];
        const wall = Math.max(...[from, to].map((along) => wallOver(run, along, laid)));
        return [{ start: trackAt(run, from), length: to - from, wall }];
      }),
    );
  });
