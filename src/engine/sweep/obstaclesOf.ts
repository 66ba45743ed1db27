import {
  boundsOf,
  boundsOverlap,
  expandBounds,
  unionOfBounds,
  type Bounds,
} from '../../geometry/bounds.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { edges as edgesOf } from '../../geometry/polygon.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { Feature } from '../../site/feature.ts';
import type { FeatureId, LineId } from '../../site/ids.ts';
import type { Path } from '../../site/path.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import type { GateLayout, Layout, LineLayout, Run } from '../layout.ts';
import { straightTurn } from '../posts/turnings.ts';
import type { Met, Obstacle } from './obstacle.ts';
import { sweptGround } from './sweptGround.ts';

/** Bounds that hold nothing. */
export const nowhere: Bounds = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

const edged = (met: Met, edges: readonly Segment<'site'>[]): Obstacle => {
  const ends = edges.flatMap(({ start, end }) => [start, end]);
  return { met, edges, disc: null, ring: null, bounds: boundsOf(ends) ?? nowhere };
};

/** The places of a path's marks. */
const placesOf = (site: Site, path: Path): SitePoint[] =>
  verticesOf(path).flatMap(({ mark }) => site.marks[mark] ?? []);

const between = (points: readonly SitePoint[]): Segment<'site'>[] =>
  points.slice(1).map((end, n) => ({ start: points[n] ?? end, end }));

const ofFeature = (site: Site, id: FeatureId, feature: Feature): Obstacle[] => {
  switch (feature.kind) {
    case 'building':
    case 'paving':
    case 'pool':
      return [edged({ kind: feature.kind, id }, edgesOf(placesOf(site, feature.path)))];
    case 'boundary': {
      const places = placesOf(site, feature.path);
      const edges = feature.closed ? edgesOf(places) : between(places);
      return [{ ...edged({ kind: 'boundary', id }, edges), ring: feature.closed ? places : null }];
    }
    case 'tree': {
      const centre = site.marks[feature.mark];
      const { trunk: radius } = feature;
      if (centre === undefined || radius === 0) return [];
      const { x, y } = centre;
      const bounds = { minX: x - radius, minY: y - radius, maxX: x + radius, maxY: y + radius };
      return [
        { met: { kind: 'tree', id }, edges: [], disc: { centre, radius }, ring: null, bounds },
      ];
    }
    case 'keep-out':
    case 'height zone':
    case 'utility':
    case 'note':
      return [];
  }
};

/** Walls, boundaries, trunks, edges of pools and paving: what a leaf could meet that is drawn. */
export const featureObstacles = (site: Site): Obstacle[] =>
  (Object.entries(site.features) as [FeatureId, Feature][]).flatMap(([id, feature]) =>
    ofFeature(site, id, feature),
  );

const fencedPieces = (run: Run, posts: Layout['posts']): Segment<'site'>[] =>
  run.spaces.flatMap((space, n) => {
    const [start, end] = [run.posts[n], run.posts[n + 1]].map(
      (stop) => posts.get(stop?.post ?? 'post:')?.at,
    );
    return space.kind === 'bay' && start !== undefined && end !== undefined ? [{ start, end }] : [];
  });

/** A run of fence as an obstacle, with the gates in it: their own fence does not stop them. */
export interface FenceObstacle extends Obstacle {
  readonly holds: (gate: GateLayout) => boolean;
}

const fenceOf = (id: LineId, run: Run, posts: Layout['posts']): FenceObstacle => {
  const gates = new Set(run.spaces.flatMap((space) => (space.kind === 'gate' ? [space.gate] : [])));
  return {
    ...edged({ kind: 'fence', id }, fencedPieces(run, posts)),
    holds: (gate) => gates.has(gate.id),
  };
};

/** A run and bounds that hold all of its fence. */
interface BoundRun {
  readonly run: Run;
  readonly bounds: Bounds;
}

/** The runs of one line, and bounds that hold all of them. */
interface BoundLine {
  readonly id: LineId;
  readonly runs: readonly BoundRun[];
  readonly bounds: Bounds;
}

/** The fence near to some ground. */
export interface FencesNear {
  /** The lines that come near to it: the very same things where none of their runs has changed. */
  readonly lines: (ground: Bounds) => readonly unknown[];
  readonly fences: (ground: Bounds) => readonly FenceObstacle[];
}

/** Bounds that hold a run: from start to end, and as far aside as an arc, or legs that hardly turn, can take it. */
const runBounds = ({ start, end, bow, length, legs }: Run): Bounds => {
  const aside = bow === 0 ? length * (legs.length - 1) * straightTurn : length;
  return expandBounds(boundsOf([start, end]) ?? nowhere, aside);
};

const boundLine = ({ id, runs }: LineLayout): BoundLine => {
  const own = runs.map((run) => ({ run, bounds: runBounds(run) }));
  const bounds = own.reduce((all, run) => unionOfBounds(all, run.bounds), nowhere);
  return { id, runs: own, bounds };
};

/**
 * The fence of every run that comes near to some ground, from post to post and not across openings. A run
 * that is taken over has its own posts where they were; those at its ends follow other runs too.
 */
export const fenceObstacles = (
  { lines, posts }: Pick<Layout, 'lines' | 'posts'>,
  carry: Carry,
): FencesNear => {
  const known = carry.shelf<FenceObstacle>('fence to meet');
  const bound = carry.shelf<BoundLine>('bounds of runs');
  const all = Object.values<LineLayout>(lines).map((line) =>
    bound.take(line.id, [line], () => boundLine(line)),
  );
  const fence = (id: LineId, run: Run): FenceObstacle => {
    const ends = [run.posts[0], run.posts.at(-1)].map(
      (stop) => posts.get(stop?.post ?? 'post:')?.at,
    );
    return known.take(run.id, [run, ...ends], () => fenceOf(id, run, posts));
  };
  const linesNear = (ground: Bounds) => all.filter(({ bounds }) => boundsOverlap(ground, bounds));
  return {
    lines: linesNear,
    fences: (ground) =>
      linesNear(ground).flatMap(({ id, runs }) =>
        runs.flatMap(({ run, bounds }) => (boundsOverlap(ground, bounds) ? [fence(id, run)] : [])),
      ),
  };
};

const sweptBy = ({ id, leaves, slides }: GateLayout): Obstacle =>
  edged({ kind: 'gate', id }, [
    ...leaves.flatMap((leaf) => edgesOf(sweptGround(leaf))),
    ...slides.map(({ closed, stored }) => ({ start: stored.start, end: closed.end })),
  ]);

/** The ground that the leaves of each placed gate turn or roll over. */
export const gateObstacles = ({ gates }: Pick<Layout, 'gates'>, carry: Carry): Obstacle[] => {
  const known = carry.shelf<Obstacle>('ground that leaves sweep');
  return Object.values(gates)
    .filter(({ placed }) => placed)
    .map((gate) => known.take(gate.id, [gate], () => sweptBy(gate)));
};
