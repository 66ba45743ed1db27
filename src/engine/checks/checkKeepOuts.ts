import { boundsOverlap } from '../../geometry/bounds.ts';
import { distance } from '../../geometry/distance.ts';
import { midpoint } from '../../geometry/midpoint.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { GateId } from '../../site/ids.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Track } from '../../geometry/track.ts';
import type { Site } from '../../site/site.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import type { Flag, FlagPlace } from '../flag.ts';
import { closedOn } from '../keepOut/closedOn.ts';
import type { KeepOut } from '../keepOut/keepOut.ts';
import { reachInto } from '../keepOut/reachInto.ts';
import { shiftClear } from '../keepOut/shiftClear.ts';
import type { Post } from '../post.ts';
import { longestBay } from '../posts/longestBay.ts';
import { isLevel } from '../posts/isLevel.ts';
import { digs } from '../wall/digs.ts';
import type { LaidLines } from '../posts/layLines.ts';
import type { LaidRun } from '../posts/layRuns.ts';
import { onTape } from '../set/setCase.ts';
import { keepOutName } from './keepOutName.ts';
import { gateName } from './names.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

type Write = (length: number) => string;

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

/** The posts that stand where they must, of some in the order of their tags. */
const mustStand = (posts: readonly Post[]): readonly Post[] =>
  posts.filter(
    ({ id, kind, wall }) => (kind !== 'line' || id.startsWith('post:pin:')) && digs(wall),
  );

const heldPosts = ({ tagged, runs, stands }: LaidLines, carry: Carry): readonly Post[] => {
  const known = carry.shelf<readonly Post[]>('posts that must stand');
  return [
    ...tagged.flatMap((own, n) => known.take(runs[n]?.key ?? '', [own], () => mustStand(own))),
    ...mustStand(stands),
  ];
};

const holesOf = (laid: LaidLines, site: Site, carry: Carry): Hole[] => [
  ...heldPosts(laid, carry).map((post): Hole => {
    const { tag, at, hole, gates } = post;
    const place = placeOf(post, laid);
    return {
      name: phrase`post ${tag}`,
      at,
      radius: hole.diameter / 2,
      place,
      gate: gates[0] ?? null,
    };
  }),
  ...Object.values(laid.gates).flatMap(({ id, placed, receiver }): Hole[] => {
    if (!placed || receiver === null) return [];
    const name = phrase`the receiver of ${gateName(site, id)}`;
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
            (laid.posts.get(posts[end])?.hole.diameter ?? 0) / 2,
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
  if (gate === null) return phrase`move it or the line`;
  const move = moveFor(laid, gate);
  if (move === null || Math.abs(move) <= slack) return phrase`move the gate or the line`;
  const by = onTape({ site }, inches(Math.abs(move)), 'ceil');
  return move < 0
    ? phrase`move the gate ${write(by)} towards the start of its leg`
    : phrase`move the gate ${write(by)} towards the end of its leg`;
};

/** Holes that reach into ground to keep out of: a stop; those that cut an edge of paving: a caution. */
const holeFlags = (site: Site, laid: LaidLines, carry: Carry, write: Write): Flag[] =>
  holesOf(laid, site, carry).flatMap((hole) => {
    const { at, radius, name, place } = hole;
    const { x, y } = at;
    const box = { minX: x - radius, maxX: x + radius, minY: y - radius, maxY: y + radius };
    return laid.keepOuts.flatMap((keepOut): Flag[] => {
      if (!boundsOverlap(box, keepOut.bounds)) return [];
      const by = reachInto(keepOut, at, radius);
      if (by <= slack) return [];
      const into = keepOutName(site, keepOut);
      if (keepOut.kind === 'joint') {
        const message = phrase`The hole of ${name} cuts ${into}: saw it clean before digging, or move the post.`;
        return [{ level: 'caution', rule: 'hole cuts paving', place, at, message }];
      }
      const message = phrase`The hole of ${name} reaches ${write(by)} into ${into}: expected all of it outside; ${mend(site, laid, hole, write)}.`;
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
  return joined(
    over.map((keepOut) => keepOutName(site, keepOut)),
    ', ',
  );
};

/** The places of the bays of a run that are over their maximum. */
const baysOver = ({ run, seated }: LaidRun, laid: LaidLines['posts']): readonly number[] => {
  const { spaces, posts } = run;
  const level = isLevel(seated);
  const ends = (n: number) => [n, n + 1].map((at) => laid.get(posts[at]?.post ?? 'post:'));
  return spaces.flatMap((space, n) => {
    const [a, b] = ends(n);
    if (space.kind !== 'bay' || a === undefined || b === undefined) return [];
    const length = level ? distance(a.at, b.at) : space.length;
    return length > longestBay(seated.spec, [a.od, b.od]) * (1 + 1e-9) + slack ? [n] : [];
  });
};

const bayFlag = (site: Site, laid: LaidLines, { run, seated }: LaidRun, n: number): Flag[] => {
  const write = writer(site);
  const length = run.spaces[n]?.length ?? 0;
  const [a, b] = [run.posts[n], run.posts[n + 1]].map((stop) =>
    laid.posts.get(stop?.post ?? 'post:'),
  );
  if (a === undefined || b === undefined) return [];
  const longest = longestBay(seated.spec, [a.od, b.od]);
  const over = namesOver(site, laid.keepOuts, { start: a.at, end: b.at, bow: 0 }, 0);
  return [
    {
      level: 'stop',
      rule: 'bay over its maximum',
      place: { kind: 'leg', line: run.line, id: run.legs[0] ?? 'vertex:' },
      at: midpoint(a.at, b.at),
      message: phrase`Between posts ${a.tag} and ${b.tag} no hole can be dug${over === '' ? '' : phrase` for ${over}`}: a bay of ${write(length)}, ${write(length - longest)} over the largest of ${write(longest)}. Move the line, or have the place found exactly so that less is closed.`,
    },
  ];
};

/** Bays over the maximum, since between their posts no hole can be dug. */
const bayFlags = (site: Site, laid: LaidLines, carry: Carry): Flag[] => {
  const known = carry.shelf<readonly number[]>('bays over their maximum');
  return laid.runs.flatMap((each) => {
    const { run, seated } = each;
    if (laid.unfilled.has(run.line)) return [];
    const { spec } = seated;
    // only panels ask how thick the posts are
    const ods =
      spec.infill.kind === 'panels' ? run.posts.map(({ post }) => laid.posts.get(post)?.od) : [];
    const over = known.take(run.id, [run, spec, ...ods], () => baysOver(each, laid.posts));
    return over.flatMap((n) => bayFlag(site, laid, each, n));
  });
};

const writer =
  (site: Site): Write =>
  (length) =>
    formatLength(inches(length), fineStyle(site.lengths));

/** What keep-outs do to holes that stand where they must, and to bays that have to cross them. */
export const checkKeepOuts = (site: Site, laid: LaidLines, carry: Carry): Flag[] => {
  if (laid.keepOuts.length === 0) return [];
  return [...holeFlags(site, laid, carry, writer(site)), ...bayFlags(site, laid, carry)];
};
