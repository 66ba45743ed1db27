import { boundsOverlap } from '../../geometry/bounds.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { GateId } from '../../site/ids.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Track } from '../../geometry/track.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag, FlagPlace } from '../flag.ts';
import { closedOn } from '../keepOut/closedOn.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import { reachInto } from '../keepOut/reachInto.ts';
import { shiftClear } from '../keepOut/shiftClear.ts';
import type { Post } from '../post.ts';
import { digs } from '../wall/digs.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { onTape } from '../set/setCase.ts';
import { keepOutName } from './keepOutName.ts';
import { gateName } from './names.ts';

/** A hole that stands where it must: it has no say in where it goes. */
interface Hole {
  readonly name: string;
  readonly at: SitePoint;
  readonly radius: number;
  readonly place: FlagPlace;
  readonly gate: GateId | null;
}

const placeOf = ({ id, gates, lines }: Post, laid: LaidLines): FlagPlace => {
  const [gate] = gates;
  if (gate !== undefined) return { kind: 'gate', id: gate };
  const mark = id.slice('post:'.length);
  if (mark.startsWith('mark:')) return { kind: 'mark', id: mark as `mark:${string}` };
  const line = lines[0] ?? Object.values(laid.lines)[0]?.id ?? 'line:';
  return { kind: 'line', id: line };
};

const holesOf = (laid: LaidLines, site: Site): Hole[] => [
  ...Object.values(laid.posts).flatMap((post): Hole[] => {
    if (post.kind === 'line' && !post.id.startsWith('post:pin:')) return [];
    if (!digs(post.wall)) return [];
    const { tag, at, hole, gates } = post;
    const place = placeOf(post, laid);
    return [{ name: `post ${tag}`, at, radius: hole.diameter / 2, place, gate: gates[0] ?? null }];
  }),
  ...Object.values(laid.gates).flatMap(({ id, placed, receiver }): Hole[] => {
    if (!placed || receiver === null) return [];
    const name = `the receiver of ${gateName(site, id)}`;
    const place = { kind: 'gate', id } as const;
    return [{ name, at: receiver.at, radius: receiver.hole.diameter / 2, place, gate: id }];
  }),
];

/** How far along its leg a gate has to be moved for its two posts to be clear; null for nowhere. */
const moveFor = (laid: LaidLines, id: GateId): number | null => {
  const gate = laid.gates[id];
  const course = laid.seated.find(({ seating }) => seating.seats.some((seat) => seat.id === id));
  const posts = gate?.posts ?? null;
  if (gate === undefined || course === undefined || posts === null) return null;
  const seat = course.seating.seats.find((each) => each.id === id);
  const { from, to } = { from: course.course.from.at, to: course.course.to.at };
  if (seat === undefined || course.course.legs.length !== 1) return null;
  const holes = (['start', 'end'] as const).map((end) => ({
    at: seat[end],
    closed: laid.keepOuts.flatMap((keepOut) =>
      keepOut.kind === 'joint'
        ? []
        : closedOn(
            keepOut,
            { start: from, end: to, bow: course.course.bow },
            (laid.posts[posts[end]]?.hole.diameter ?? 0) / 2,
          ),
    ),
  }));
  return shiftClear(holes, course.course.length);
};

const mend = (
  site: Site,
  laid: LaidLines,
  { gate }: Hole,
  write: (length: number) => string,
): string => {
  if (gate === null) return 'move it or the line';
  const move = moveFor(laid, gate);
  if (move === null || Math.abs(move) <= slack) return 'move the gate or the line';
  const by = onTape({ site }, inches(Math.abs(move)), 'ceil');
  return `move the gate ${write(by)} towards the ${move < 0 ? 'start' : 'end'} of its leg`;
};

/** Holes that reach into ground to keep out of: a stop; those that cut an edge of paving: a caution. */
const holeFlags = (site: Site, laid: LaidLines, write: (length: number) => string): Flag[] =>
  holesOf(laid, site).flatMap((hole) => {
    const { at, radius, name, place } = hole;
    const { x, y } = at;
    const box = { minX: x - radius, maxX: x + radius, minY: y - radius, maxY: y + radius };
    return laid.keepOuts.flatMap((keepOut): Flag[] => {
      if (!boundsOverlap(box, keepOut.bounds)) return [];
      const by = reachInto(keepOut, at, radius);
      if (by <= slack) return [];
      const into = keepOutName(site, keepOut);
      if (keepOut.kind === 'joint') {
        const message = `The hole of ${name} cuts ${into}: saw it clean before digging, or move the post.`;
        return [{ level: 'caution', rule: 'hole cuts paving', place, at, message }];
      }
      const message = `The hole of ${name} reaches ${write(by)} into ${into}: expected all of it outside; ${mend(site, laid, hole, write)}.`;
      return [{ level: 'stop', rule: 'hole in a keep-out', place, at, message }];
    });
  });

const namesOver = (
  site: Site,
  keepOuts: readonly KeepOut[],
  bay: Track<'site'>,
  radius: number,
): string => {
  const over = keepOuts.filter((keepOut) => closedOn(keepOut, bay, radius).length > 0);
  return over.map((keepOut) => keepOutName(site, keepOut)).join(', ');
};

/** Bays over the maximum, since between their posts no hole can be dug. */
const bayFlags = (site: Site, laid: LaidLines, write: (length: number) => string): Flag[] => {
  const specs = new Map(
    laid.seated.map(({ course, spec }) => [`run:${course.chain.id}:${course.from.vertex}`, spec]),
  );
  return Object.values(laid.lines).flatMap(({ id, runs }) => {
    if (laid.unfilled.has(id)) return [];
    return runs.flatMap((run) => {
      const spec = specs.get(run.id);
      if (spec === undefined) return [];
      return run.spaces.flatMap((space, n): Flag[] => {
        if (space.kind !== 'bay' || space.length <= spec.maxBay * (1 + 1e-9) + slack) return [];
        const [a, b] = [run.posts[n], run.posts[n + 1]].map(
          (stop) => laid.posts[stop?.post ?? 'post:'],
        );
        if (a === undefined || b === undefined) return [];
        const bay = { start: a.at, end: b.at, bow: 0 };
        const over = namesOver(site, laid.keepOuts, bay, 0);
        return [
          {
            level: 'stop',
            rule: 'bay over its maximum',
            place: { kind: 'leg', line: id, id: run.legs[0] ?? 'vertex:' },
            at: midpoint(a.at, b.at),
            message: `Between posts ${a.tag} and ${b.tag} no hole can be dug${over === '' ? '' : ` for ${over}`}: a bay of ${write(space.length)}, ${write(space.length - spec.maxBay)} over the largest of ${write(spec.maxBay)}. Move the line, or have the place found exactly so that less is closed.`,
          },
        ];
      });
    });
  });
};

/** What keep-outs do to holes that stand where they must, and to bays that have to cross them. */
export const checkKeepOuts = (site: Site, laid: LaidLines): Flag[] => {
  if (laid.keepOuts.length === 0) return [];
  const write = (length: number): string => formatLength(inches(length), fineStyle(site.lengths));
  return [...holeFlags(site, laid, write), ...bayFlags(site, laid, write)];
};
