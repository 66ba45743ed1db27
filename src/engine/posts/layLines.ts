import type { Gate } from '../../site/gate.ts';
import type { GateId, LineId, ShotId } from '../../site/ids.ts';
import type { Shot } from '../../site/shot.ts';
import type { Site } from '../../site/site.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import { openingOf } from '../gate/openingOf.ts';
import { termsOf } from '../gate/termsOf.ts';
import type { GateLayout, Layout, Run } from '../layout.ts';
import type { Post, PostId } from '../post.ts';
import { groundWidth } from '../set/groundWidth.ts';
import { keepOutsOf } from '../keepOut/keepOutsOf.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import { builtMarkPosts, builtRunPosts } from './builtPosts.ts';
import { chainOf, type Chain } from './chain.ts';
import { closedGround } from './closedGround.ts';
import { coursesOf } from './course.ts';
import { slopeAt } from '../ground/gradeLine.ts';
import { groundOf, type Ground } from '../ground/groundOf.ts';
import { fencesOn } from './fencesOn.ts';
import { groundUnder } from './groundUnder.ts';
import { postsAtSteps } from './postsAtSteps.ts';
import { pullsAtBreaks } from './pullsAtBreaks.ts';
import { raised } from './raised.ts';
import { gateLayouts } from './gateLayouts.ts';
import { gateStands } from './gateStands.ts';
import type { KnownGate } from './gateSlots.ts';
import { markPostsOf, type TurnedChain } from './markPosts.ts';
import { numbered } from './numbered.ts';
import { pinsByLine, pinsOn } from './pinsOn.ts';
import { runPosts } from './runPosts.ts';
import { seatAsSet } from './seatAsSet.ts';
import type { SeatedCourse } from './seatLines.ts';
import { specOn } from './specOn.ts';
import { spotsOf } from './spotsOf.ts';
import { tagged } from './tagged.ts';
import { turningsOf, usesOfMarks } from './turnings.ts';
import { unfilledOf, type Unfilled } from './unfilledOf.ts';
import { wallsOf } from './wallSetback.ts';
import { withPulls, type SeatedRow } from './withPulls.ts';

/** Lines, posts and gates of a site, and what the checks want to know besides. */
export interface LaidLines extends Pick<Layout, 'lines' | 'posts' | 'gates' | 'ground'> {
  readonly chains: readonly Chain[];
  readonly seated: readonly SeatedCourse[];
  /** Lines without line posts. */
  readonly unfilled: Unfilled;
  readonly keepOuts: readonly KeepOut[];
}

const compareIds = <T>(a: readonly [string, T], b: readonly [string, T]): number =>
  a[0] < b[0] ? -1 : 1;

const sortedEntries = <Id extends string, T>(map: Readonly<Record<Id, T>>): [Id, T][] =>
  (Object.entries(map) as [Id, T][]).toSorted(compareIds);

const turnedChains = (site: Site): TurnedChain[] => {
  const spots = spotsOf(site);
  const chains = sortedEntries(site.lines).map(([id, line]) => chainOf(id, line, site, spots));
  const uses = usesOfMarks(chains);
  return chains.flatMap((chain) => {
    const spec = site.specs[chain.line.spec];
    if (spec === undefined) return [];
    return [{ chain, spec, turnings: turningsOf(chain, spec.cornerAngle, uses) }];
  });
};

/** A gate that was set stands at the width of its posts at the ground, any other at its target. */
const knownGate = (id: GateId, gate: Gate, site: Site): KnownGate => {
  const opening = openingOf(termsOf(gate, site));
  const stands = gate.asSet === null ? opening.target : groundWidth(gate.asSet);
  return { id, gate, opening, stands };
};

const knownGates = (site: Site): Map<GateId, KnownGate> =>
  new Map(sortedEntries(site.gates).map(([id, gate]) => [id, knownGate(id, gate, site)]));

/** A gate on a leg that is not there: its marks stand on one spot, or the line has no such leg. */
const homeless = (
  { id, gate, opening, stands }: KnownGate,
  chains: readonly Chain[],
): GateLayout => {
  const stops = chains.find((chain) => chain.id === gate.line);
  const all = [...(stops?.stops ?? []), ...(stops?.doubled ?? [])];
  const at = all.find(({ vertex }) => vertex === gate.leg)?.at ?? { x: 0, y: 0 };
  return {
    id,
    line: gate.line,
    placed: false,
    opening,
    stands,
    posts: null,
    start: at,
    end: at,
    middle: at,
    bearing: radians(0),
    leaves: [],
    slides: [],
    stop: null,
    receiver: null,
  };
};

/** A run as it is measured: along the grade where the ground is known. */
const runOf = ({ seated, row, under }: SeatedRow): Run => {
  const { course } = seated;
  const grade = under?.grade ?? null;
  const along = (at: Inches): Inches => (grade === null ? at : slopeAt(grade, at));
  const posts = row.posts.map(({ post, station }) => ({ post, station: along(station) }));
  return {
    id: `run:${course.chain.id}:${course.from.vertex}`,
    line: course.chain.id,
    legs: course.legs.map(({ id }) => id),
    start: course.from.at,
    end: course.to.at,
    length: along(course.length),
    bearing: course.legs[0]?.bearing ?? radians(0),
    bow: course.bow,
    posts,
    spaces: row.spaces.map((space, n) =>
      grade === null
        ? space
        : { ...space, length: inches((posts[n + 1]?.station ?? 0) - (posts[n]?.station ?? 0)) },
    ),
    wall: course.wall,
    ground: under === null ? null : { ...under, fences: fencesOn(seated, row, under) },
  };
};

/** What lies under the runs, and where they bend. */
interface LaidOn {
  readonly bends: ReadonlySet<PostId>;
  readonly keepOuts: readonly KeepOut[];
  readonly ground: Ground | null;
}

/** Lays out every run of the seated courses, in the order in which they come. */
const layRuns = (
  site: Site,
  seated: readonly SeatedCourse[],
  gates: ReadonlyMap<GateId, KnownGate>,
  { bends, keepOuts, ground }: LaidOn,
) => {
  const pins = pinsByLine(site);
  const rows = seated.map((each): SeatedRow => {
    const { posts: pinned, clear } = pinsOn(each.course, pins.get(each.course.chain.id) ?? []);
    const closed = closedGround(each, keepOuts, clear);
    const under = groundUnder(each.course, ground);
    const held = [...pinned, ...pullsAtBreaks(each, under, closed), ...postsAtSteps(each)].toSorted(
      (a, b) => a.station - b.station,
    );
    const row = runPosts(each, gates, { closed, held, grade: under?.grade ?? null });
    return { seated: each, row, under };
  });
  return numbered(withPulls(rows, bends, keepOuts), bends).map((each) => ({
    run: runOf(each),
    row: each.row,
    seated: each.seated,
  }));
};

const lineLayouts = (chains: readonly Chain[], runs: readonly Run[]): LaidLines['lines'] => {
  const own = new Map<LineId, Run[]>(chains.map(({ id }) => [id, []]));
  for (const run of runs) own.get(run.line)?.push(run);
  return Object.fromEntries(
    chains.map(({ id, legs, length }) => [id, { id, legs, runs: own.get(id) ?? [], length }]),
  );
};

/** The ground as its shots describe it; null for a site without any. */
const groundFor = ({ shots }: Site): Ground | null => {
  const known = (Object.entries(shots) as [ShotId, Shot][]).map(([id, shot]) => ({ ...shot, id }));
  return known.length === 0 ? null : groundOf(known);
};

const fabricOf = (site: Site, { line }: Run): number =>
  site.specs[site.lines[line]?.spec ?? 'spec:']?.fabricHeight ?? 0;

/** Works out posts, runs and gates of every fence line of a site. */
export const layLines = (site: Site): LaidLines => {
  const turned = turnedChains(site);
  const chains = turned.map(({ chain }) => chain);
  const marks = markPostsOf(turned);
  const asked = turned.flatMap(({ chain, spec, turnings }) =>
    coursesOf(chain, turnings).map((course) => ({ course, spec: specOn(course, spec) })),
  );
  const unfilled = unfilledOf(asked);
  const courses = asked.map(({ course, spec }) => ({
    course,
    spec: unfilled.has(course.chain.id) ? { ...spec, maxBay: inches(Infinity) } : spec,
  }));
  const shared = { courses, marks, walls: wallsOf(site) };
  const keepOuts = keepOutsOf(site);
  const ground = groundFor(site);
  const { seated, burdens, gates } = seatAsSet(shared, knownGates(site));
  const markPosts = builtMarkPosts(marks, burdens, seated);
  const bends = new Set(markPosts.flatMap((post) => (post.kind === 'bend' ? [post.id] : [])));
  const rows = layRuns(site, seated, gates, { bends, keepOuts, ground });
  const placed = rows.flatMap(({ seated: each, row }) => gateLayouts(each, row, gates, site));
  const all = new Map(placed.map((gate) => [gate.id, gate]));
  const runs = rows.map(({ run }) => run);
  const level: Post[] = [
    ...markPosts,
    ...rows.flatMap(({ seated: each, row }) => builtRunPosts(each, row.own)),
  ];
  const posts = raised(level, runs, (run) => fabricOf(site, run));
  const onRuns = tagged(posts, runs);
  const inTurn = [...gates.keys()].flatMap((id) => all.get(id) ?? []);
  const stands = gateStands(site, inTurn, onRuns);
  return {
    chains,
    seated,
    unfilled,
    keepOuts,
    ground,
    lines: lineLayouts(chains, runs),
    posts: { ...onRuns, ...Object.fromEntries(stands.map((post) => [post.id, post])) },
    gates: Object.fromEntries(
      [...gates.values()].map((gate) => [gate.id, all.get(gate.id) ?? homeless(gate, chains)]),
    ),
  };
};
