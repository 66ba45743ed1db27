import { boundsOf, boundsOverlap, expandBounds } from '../../geometry/bounds.ts';
import type { LineId, PinId } from '../../site/ids.ts';
import type { Pin } from '../../site/pin.ts';
import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
import type { Ground } from '../ground/groundOf.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import type { GateLayout, Run } from '../layout.ts';
import type { Post, PostId } from '../post.ts';
import { builtRunPosts, type LineMarkPosts } from './builtPosts.ts';
import { closedGround } from './closedGround.ts';
import { gateLayouts } from './gateLayouts.ts';
import type { Course } from './course.ts';
import { groundUnder, type CourseGround } from './groundUnder.ts';
import { holeFor } from './holeFor.ts';
import { numbered } from './numbered.ts';
import { pinsByLine, pinsOn } from './pinsOn.ts';
import { postsAtSteps } from './postsAtSteps.ts';
import { pullsAtBreaks } from './pullsAtBreaks.ts';
import { runOf } from './runOf.ts';
import { runPosts } from './runPosts.ts';
import type { SeatedCourse, SeatedLine } from './seatLines.ts';
import { withPulls, type SeatedRow } from './withPulls.ts';

/** What lies under the runs, and the posts at the marks of each line. */
export interface LaidOn {
  readonly posts: readonly LineMarkPosts[];
  readonly keepOuts: readonly KeepOut[];
  readonly ground: Ground | null;
}

/** A run as it is built, with its gates and the posts that are its own, level and not yet tagged. */
export interface LaidRun {
  readonly key: string;
  readonly run: Run;
  readonly seated: SeatedCourse;
  readonly gates: readonly GateLayout[];
  readonly own: readonly Post[];
}

/** The runs of one line as they are built, in their order along it. */
export interface LineRuns {
  readonly id: LineId;
  readonly runs: readonly LaidRun[];
}

/** The keep-outs that a hole of any line or pull post of a course could reach into. */
const nearBy = ({ course, spec }: SeatedCourse, keepOuts: readonly KeepOut[]) => {
  if (keepOuts.length === 0) return keepOuts;
  const { fabricHeight, linePost, terminalPost } = spec;
  const holes = [linePost, terminalPost].map(
    (post) => holeFor({ post, fabricHeight, leaf: null, wall: course.wall }).diameter,
  );
  const box = boundsOf([course.from.at, course.to.at, ...course.legs.map(({ end }) => end)]);
  // no place of an arc is farther from its ends than it is long
  const bulge = course.bow === 0 ? 0 : course.length;
  const reach = box && expandBounds(box, Math.max(...holes) + bulge + 1);
  return keepOuts.filter(({ bounds }) => reach !== null && boundsOverlap(reach, bounds));
};

type Pins = readonly (readonly [PinId, Pin])[];

const rowOf = (
  seated: SeatedCourse,
  { pins, near, under }: { pins: Pins; near: readonly KeepOut[]; under: CourseGround | null },
): SeatedRow => {
  const { posts: pinned, clear } = pinsOn(seated.course, pins);
  const closed = closedGround(seated, near, clear);
  const held = [
    ...pinned,
    ...pullsAtBreaks(seated, under, closed),
    ...postsAtSteps(seated),
  ].toSorted((a, b) => a.station - b.station);
  const gates = new Map(seated.known.map((gate) => [gate.id, gate]));
  const row = runPosts(seated, gates, { closed, held, grade: under?.grade ?? null });
  return { seated, row, under, near };
};

/** What the runs of one line are laid on. */
interface LineLaidOn extends Omit<LaidOn, 'posts'> {
  readonly site: Site;
  readonly bends: ReadonlySet<PostId>;
  readonly pins: Pins;
}

/** Whether anything can be known of what is under a course: of most yards nothing was shot. */
const isKnown = ({ wall }: Course, ground: Ground | null): boolean =>
  wall !== null || ground !== null;

const rowsOf = (
  seated: readonly SeatedCourse[],
  { keepOuts, ground, pins: onLine }: LineLaidOn,
  carry: Carry,
): SeatedRow[] => {
  const profiles = carry.shelf<CourseGround | null>('ground under');
  const settled = carry.shelf<CourseGround>('settled ground under');
  const rows = carry.shelf<SeatedRow>('row');
  return seated.map((each) => {
    const { course } = each;
    const { key } = course;
    const found = isKnown(course, ground)
      ? profiles.take(key, [course, ground], () => groundUnder(course, ground))
      : null;
    const under = found === null ? null : settled.settle(key, found);
    const pins =
      onLine.length === 0 ? onLine : onLine.filter(([, { leg }]) => course.places.has(leg));
    const near = nearBy(each, keepOuts);
    const from = [each, under, ...near, ...pins.flat()];
    return rows.take(key, from, () => rowOf(each, { pins, near, under }));
  });
};

/** A run as it is built, and the row that it is built from. */
interface Laid {
  readonly row: SeatedRow['row'];
  readonly laid: LaidRun;
}

/** Of the run before is taken over what is made of the same: its posts, where only its bays have other numbers. */
const laidRun = (each: SeatedRow, site: Site, before: Laid | undefined): Laid => {
  const { seated, row } = each;
  const same = before !== undefined && before.laid.seated === seated ? before : null;
  const laid = {
    key: seated.course.key,
    run: runOf(each),
    seated,
    gates: gateLayouts(seated, row, site),
    own: same?.row.own === row.own ? same.laid.own : builtRunPosts(seated, row.own),
  };
  return { row, laid };
};

/** Lays out every run of the seated courses of one line. */
const layLine = (
  seated: readonly SeatedCourse[],
  on: LineLaidOn,
  carry: Carry,
): readonly LaidRun[] => {
  const laid = carry.shelf<Laid>('laid run');
  const rows = withPulls(rowsOf(seated, on, carry), on.bends, carry);
  const all = numbered(rows, on.bends, carry).map((each) => {
    const { key } = each.seated.course;
    return laid.next(key, [each], (before) => laidRun(each, on.site, before)).laid;
  });
  return carry.shelf<readonly LaidRun[]>('laid runs').list('', all);
};

const noPins: Pins = [];

/** Lays out every run of the seated courses, line by line in the order in which they come. */
export const layRuns = (
  site: Site,
  lines: readonly SeatedLine[],
  { posts, keepOuts, ground }: LaidOn,
  carry: Carry,
): readonly LineRuns[] => {
  const shelf = carry.shelf<LineRuns>('runs of a line');
  const byLine = pinsByLine(site);
  return lines.map(({ id, seated }, n) => {
    const bends = posts[n]?.bends ?? new Set();
    const pins = byLine.get(id) ?? noPins;
    const from = [seated, bends, keepOuts, ground, ...pins.flat()];
    const on = { site, bends, keepOuts, ground, pins };
    return shelf.part(id, from, (own) => ({ id, runs: layLine(seated, on, own) }));
  });
};
