import type { SitePoint } from '../../geometry/point.ts';
import { spot } from '../../geometry/tolerance.ts';
import type { GateId } from '../../site/ids.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { planAt, slopeAt, type GradeLine } from '../ground/gradeLine.ts';
import type { Run, Space } from '../layout.ts';
import type { PostId } from '../post.ts';
import { wider, widestHung, type KnownGate } from './gateSlots.ts';
import { larger } from './markPosts.ts';
import type { SeatedCourse } from './seatLines.ts';
import { pointAt } from './course.ts';
import { equalBays } from './equalBays.ts';
import { isLevel } from './isLevel.ts';
import { longestBay, widestPanel } from './longestBay.ts';
import { panelStations } from './panelStations.ts';
import { spaceOut, type Closed } from './spaceOut.ts';

/** A post on a run that does not stand at a mark. `station` in inches along the run. */
export interface RunPost {
  readonly id: PostId;
  readonly kind: 'gate' | 'line' | 'pull';
  readonly station: number;
  readonly pipe: PostPipe;
  readonly gates: readonly GateId[];
  /** The widest leaf that hangs on it; null for none. */
  readonly leaf: Inches | null;
}

/** A run's posts and spaces from its start to its end, and the posts that are its own. */
export interface RunRow {
  readonly posts: Run['posts'];
  readonly spaces: Run['spaces'];
  readonly own: readonly RunPost[];
}

/** A post that stands where it must, with the gate that opens after it, if any. */
interface Node {
  readonly id: PostId;
  readonly station: number;
  readonly opens: GateId | null;
}

const gateNodes = (
  seated: SeatedCourse,
  gates: ReadonlyMap<GateId, KnownGate>,
): { nodes: Node[]; own: RunPost[] } => {
  const { course, spec, from, to, seating } = seated;
  const nodes: Node[] = [{ id: `post:${course.from.mark}`, station: from.station, opens: null }];
  const own: RunPost[] = [];
  const stand = (station: number, id: PostId, gate: KnownGate): void => {
    const pipe = gate.gate.post ?? spec.gatePost;
    own.push({ id, kind: 'gate', station, pipe, gates: [gate.id], leaf: widestHung(gate.gate) });
    nodes.push({ id, station, opens: null });
  };
  const share = (station: number, gate: KnownGate): void => {
    const last = own.pop();
    if (last === undefined) return;
    const pipe = larger(last.pipe, gate.gate.post ?? spec.gatePost);
    const leaf = wider(last.leaf, widestHung(gate.gate));
    own.push({ ...last, station, pipe, leaf, gates: [...last.gates, gate.id].toSorted() });
  };
  for (const seat of seating.seats) {
    const gate = gates.get(seat.id);
    if (gate === undefined) continue;
    if (seat.startWith === null) stand(seat.start, `post:${seat.id}:start`, gate);
    if (seat.startWith === 'gate') share(seat.start, gate);
    const last = nodes.pop();
    if (last !== undefined) nodes.push({ ...last, opens: seat.id });
    if (seat.endWith !== 'run') stand(seat.end, `post:${seat.id}:end`, gate);
  }
  nodes.push({ id: `post:${course.to.mark}`, station: to.station, opens: null });
  return { nodes, own };
};

/** A post that stands at a place of its own between the nodes: held by hand, or at a break of grade. */
export interface HeldPost {
  readonly id: PostId;
  readonly station: number;
  readonly kind: 'line' | 'pull';
}

const heldPost = ({ spec }: SeatedCourse, { id, station, kind }: HeldPost): RunPost => ({
  id,
  kind,
  station,
  pipe: kind === 'pull' ? spec.terminalPost : spec.linePost,
  gates: [],
  leaf: null,
});

/** The nodes with held posts among them, where one stands between two and in no opening. */
const withHeld = (seated: SeatedCourse, nodes: readonly Node[], held: readonly HeldPost[]) => {
  const posts: RunPost[] = [];
  if (held.length === 0) return { all: nodes, posts };
  const all = nodes.flatMap((node, n): Node[] => {
    const end = nodes[n + 1]?.station ?? node.station;
    if (node.opens !== null) return [node];
    const between = held.filter(
      ({ station }, k) =>
        station > node.station + spot &&
        station < end - spot &&
        station - (held[k - 1]?.station ?? -Infinity) > spot,
    );
    const own = between.map((pin) => heldPost(seated, pin));
    posts.push(...own);
    return [node, ...own.map(({ id, station }) => ({ id, station, opens: null }))];
  });
  return { all, posts };
};

/** Line posts at stations along the run; their ids count up along it. */
const linePosts = (
  { course: { chain, from }, spec }: SeatedCourse,
  stations: readonly number[],
  used: number,
): RunPost[] =>
  stations.map((station, n) => ({
    id: `post:${chain.id}:${from.vertex}:${used + n + 1}` as const,
    kind: 'line' as const,
    station,
    pipe: spec.linePost,
    gates: [],
    leaf: null,
  }));

/** Whether a fence is told from its western end here, from the southern one where it runs north. */
const fromWest = (a: SitePoint, b: SitePoint): boolean =>
  Math.abs(b.x - a.x) > spot ? a.x < b.x : a.y <= b.y;

/** How thick the posts of a run are that stand before its line posts do, inches. */
const thicknesses = ({ from, to }: SeatedCourse, own: readonly RunPost[], nodes: number) => {
  const known = new Map(own.map(({ id, pipe }) => [id, pipe.od] as const));
  return ({ id }: Node, n: number): Inches => {
    if (n === 0) return from.od;
    return n === nodes - 1 ? to.od : (known.get(id) ?? inches(0));
  };
};

/** What a run is filled with and on what ground, by its course; stations in plan. */
export interface RunGrounds {
  readonly closed: readonly Closed[];
  readonly held: readonly HeldPost[];
  /** Null where nothing is known of the ground: as on the level. */
  readonly grade: GradeLine | null;
}

/** Two posts that stand, and all that is between them; stations in plan. */
interface Between {
  readonly from: number;
  readonly to: number;
  /** How thick the two are, inches. */
  readonly posts: readonly [Inches, Inches];
}

/** Stations of line posts along a length where no ground is closed. */
const onOpenGround = ({ spec, course }: SeatedCourse, length: Inches, { posts }: Between) => {
  const { infill, linePost } = spec;
  const width = widestPanel(spec);
  if (infill.kind === 'panels' && width !== null) {
    const [from, to] = posts;
    const { hook } = course.chain.line;
    return panelStations(
      length,
      { from, to, line: linePost.od },
      { width, last: infill.last, hook },
    );
  }
  const bays = equalBays(length, spec.maxBay);
  const stations: number[] = [];
  for (let n = 1; n < bays.count; n += 1) stations.push(n * bays.length);
  return stations;
};

/**
 * Stations along the run, in plan, of the line posts between two others: spaced parallel to the
 * grade (ASTM F567-07 4.1), in ground of which some is closed. Where two ways are as good as each
 * other the one told from the west counts, so that a line drawn backwards gets the same posts.
 */
const between = (
  seated: SeatedCourse,
  part: Between,
  { closed, grade: known }: RunGrounds,
): number[] => {
  const { spec, course } = seated;
  const { from, to, posts } = part;
  const grade = isLevel(seated) ? null : known;
  const along = (at: number) => (grade === null ? at : slopeAt(grade, inches(at)));
  const inPlan = (at: number) => (grade === null ? at : planAt(grade, inches(at)));
  const [start, end] = [along(from), along(to)];
  const length = inches(end - start);
  const open = onOpenGround(seated, length, part).map((at) => start + at);
  if (closed.length === 0) return grade === null ? open : open.map(inPlan);
  const isClosed = (at: number) =>
    closed.some((piece) => along(piece.from) < at && at < along(piece.to));
  if (spec.infill.kind === 'panels' && !open.some(isClosed)) return open.map(inPlan);
  const ahead = fromWest(pointAt(course, from), pointAt(course, to));
  const own = closed.map((piece) => {
    const [low, high] = [along(piece.from), along(piece.to)];
    return ahead ? { from: low - start, to: high - start } : { from: end - high, to: end - low };
  });
  // where the posts at the two ends are thinner than line posts less is left between centres
  const { od } = spec.linePost;
  const longest = Math.min(longestBay(spec), ...posts.map((one) => longestBay(spec, [one, od])));
  const { stations } = spaceOut(length, inches(longest), own);
  const told = ahead
    ? stations.map((at) => start + at)
    : stations.toReversed().map((at) => end - at);
  return told.map(inPlan);
};

/**
 * Fills a run: gate posts where the gates sit, posts that are held by hand, line posts between, off
 * the ground that is closed to them. A post held in an opening, past an end or on another one is left
 * out. Bays are not numbered yet.
 */
export const runPosts = (
  seated: SeatedCourse,
  gates: ReadonlyMap<GateId, KnownGate>,
  grounds: RunGrounds,
): RunRow => {
  const { nodes, own } = gateNodes(seated, gates);
  const { all, posts: stood } = withHeld(seated, nodes, grounds.held);
  const posts: Run['posts'][number][] = [];
  const spaces: Space[] = [];
  const lines: RunPost[] = [];
  const odOf = thicknesses(seated, [...own, ...stood], all.length);
  all.forEach((node, n) => {
    posts.push({ post: node.id, station: inches(node.station) });
    const next = all[n + 1];
    if (next === undefined) return;
    if (node.opens !== null) {
      spaces.push({ kind: 'gate', length: inches(next.station - node.station), gate: node.opens });
      return;
    }
    const part = {
      from: node.station,
      to: next.station,
      posts: [odOf(node, n), odOf(next, n + 1)] as const,
    };
    const stations = between(seated, part, grounds);
    const filled = linePosts(seated, stations, lines.length);
    let start = node.station;
    for (const line of filled) {
      const { id, station } = line;
      lines.push(line);
      posts.push({ post: id, station: inches(station) });
      spaces.push({ kind: 'bay', length: inches(station - start), stretch: 0 });
      start = station;
    }
    spaces.push({ kind: 'bay', length: inches(next.station - start), stretch: 0 });
  });
  return { posts, spaces, own: [...own, ...stood, ...lines] };
};
