import { distance } from '../../geometry/distance.ts';
import { piecesInside } from '../../geometry/piecesInside.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Polygon } from '../../geometry/polygon.ts';
import type { Segment } from '../../geometry/segment.ts';
import { nearestOnTrack, trackAt, trackLength, trackPoints } from '../../geometry/track.ts';
import { moved } from '../../geometry/moved.ts';
import { bearing } from '../../geometry/bearing.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import { heightAt } from '../ground/heightAt.ts';
import { profileHeight } from '../ground/profileHeight.ts';
import type { LineLayout, Run } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';

/** Fence that stands in a zone, straight, in the direction of its line. */
export interface ZonedPiece extends Segment<'site'> {
  readonly length: number;
  /** The higher of the tops that its wall has at its two ends, inches over the ground; 0 where it stands on the ground. */
  readonly wall: number;
}

/** How far straight pieces may lie inside a curve that they stand for, inches. */
const off = 1 / 128;

/** The way from one post of a run to the next, in straight pieces along its curve. */
const between = (run: Run, from: SitePoint, to: SitePoint): Segment<'site'>[] => {
  if (run.bow === 0) return [{ start: from, end: to }];
  const [a, b] = [from, to].map((at) => nearestOnTrack(at, run).along);
  const [first, last] = [a ?? 0, b ?? 0];
  const step = trackLength(run) / (trackPoints(run, off).length - 1);
  const count = Math.max(1, Math.ceil((last - first) / step));
  const points = Array.from({ length: count + 1 }, (_, n) =>
    trackAt(run, first + ((last - first) * n) / count),
  );
  return points.slice(1).map((end, n) => ({ start: points[n] ?? end, end }));
};

/** Where a run has fence or a leaf: all of its spaces but gaps without a leaf. */
const fenceOf = (run: Run, site: Site, { posts }: LaidLines): Segment<'site'>[] =>
  run.spaces.flatMap((space, n) => {
    if (space.kind === 'gate' && site.gates[space.gate]?.way.kind === 'gap') return [];
    const [a, b] = [run.posts[n], run.posts[n + 1]].map((stop) => posts[stop?.post ?? 'post:']);
    if (a === undefined || b === undefined) return [];
    // a gate is straight from post to post, on a curve too
    return between(space.kind === 'gate' ? { ...run, bow: 0 } : run, a.at, b.at);
  });

/** How high the top of the wall of a run is over the ground at a place; as on the level where no ground is known. */
const wallOver = (run: Run, at: SitePoint, { ground }: LaidLines): number => {
  if (run.wall === null) return 0;
  const along = inches(nearestOnTrack(at, run).along);
  const top = run.ground === null ? null : profileHeight(run.ground.profile, along);
  const known = [at, run.start, run.end].map((place) =>
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
  line.runs.flatMap((run) =>
    fenceOf(run, site, laid).flatMap((piece) =>
      piecesInside(piece, zone).map(({ from, to }) => {
        const way = bearing(piece.start, piece.end);
        const [start, end] = [moved(piece.start, way, from), moved(piece.start, way, to)];
        const wall = Math.max(...[start, end].map((at) => wallOver(run, at, laid)));
        return { start, end, length: distance(start, end), wall };
      }),
    ),
  );
