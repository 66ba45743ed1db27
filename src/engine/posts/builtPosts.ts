import { bearing } from '../../geometry/bearing.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { MarkId } from '../../site/ids.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import type { WallTop } from '../../site/wallTop.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { radians, type Radians } from '../../units/radians.ts';
import { alike } from '../carry/alike.ts';
import type { Carry } from '../carry/carry.ts';
import type { Post, PostId } from '../post.ts';
import { pointAt, wayAt } from './course.ts';
import { deepened } from './deepened.ts';
import { holeFor, type HoleDemand } from './holeFor.ts';
import type { MarkPost } from './markPosts.ts';
import type { RunPost } from './runPosts.ts';
import type { MarkBurden, SeatedCourse, SeatedLine } from './seatLines.ts';

type Bare = Omit<Post, 'tag' | 'hole' | 'wall' | 'length' | 'od' | 'section' | 'pipe'>;

/** What asks for a hole, and how deep the build wants every one of them, inches. */
type Demand = Omit<HoleDemand, 'post'> & { readonly leastDepth: Inches };

/** The hole of a post, as deep as its build wants it. */
const holeOf = (post: PostPipe, { fabricHeight, leaf, wall, leastDepth }: Demand): Post['hole'] =>
  deepened(holeFor({ post, fabricHeight, leaf, wall }), wall, leastDepth);

const built = (bare: Bare, post: PostPipe, hole: Post['hole'], wall: WallTop | null): Post => {
  const { label: pipe, od, section } = post;
  const { id, kind, at, along, lines, gates, above } = bare;
  const length = inches(above + hole.depth);
  // field by field: of thousands of posts a spread with more behind it takes ten times as long
  return {
    id,
    tag: '',
    kind,
    at,
    along,
    od,
    section,
    pipe,
    lines,
    gates,
    above,
    hole,
    wall,
    length,
  };
};

/** The posts of one run that do not stand at its ends, with holes and heights; not yet tagged. */
export const builtRunPosts = (
  { course, spec }: SeatedCourse,
  own: readonly RunPost[],
): readonly Post[] => {
  const { fabricHeight, leastDepth } = spec;
  const { wall } = course;
  const usual = { fabricHeight, leaf: null, wall, leastDepth };
  const { diameter, depth, source } = holeOf(spec.linePost, usual);
  return own.map(({ id, kind, station, pipe, gates, leaf }) => {
    const rise = kind === 'line' ? spec.lineAbove : spec.terminalAbove;
    const bare: Bare = {
      id,
      kind,
      at: pointAt(course, station),
      along: wayAt(course, station),
      lines: [course.chain.id],
      gates,
      above: inches(spec.fabricHeight + rise),
    };
    const isUsual = pipe === spec.linePost && leaf === null;
    const hole = isUsual ? { diameter, depth, source } : holeOf(pipe, { ...usual, leaf });
    return built(bare, pipe, hole, wall);
  });
};

/** Where a mark's post stands, on what, and the directions of the fence through it. */
interface Footing {
  readonly at: SitePoint;
  readonly atWall: boolean;
  readonly on: WallTop | null;
  readonly ways: readonly Radians[];
}

/** The wall that a post between two legs stands on: the wider one, before the ground. */
const wider = (a: WallTop | null, b: WallTop | null): WallTop | null => {
  if (a === null || b === null) return a ?? b;
  const more = b.width - a.width || b.height - a.height;
  if (more !== 0) return more > 0 ? b : a;
  return JSON.stringify(b.set) < JSON.stringify(a.set) ? b : a;
};

/** The ends of a course, with the direction of its fence there. */
const endsOf = ({ course, from, to }: SeatedCourse) => ({
  start: from.wall ? pointAt(course, from.station) : course.from.at,
  starts: wayAt(course, 0),
  end: to.wall ? pointAt(course, to.station) : course.to.at,
  ends: wayAt(course, course.length),
});

/** What a course ends with at a mark: where its post would stand, on what, and which way the fence goes there. */
interface End extends Omit<Footing, 'ways'> {
  readonly mark: MarkId;
  readonly way: Radians;
}

type CourseEnds = readonly [End, End];

/** The ends of the courses of a line, in their order. */
const courseEnds = (seated: readonly SeatedCourse[], carry: Carry): End[] => {
  const shelf = carry.shelf<CourseEnds>('ends of a course');
  return seated.flatMap((each) => {
    const { course, from, to } = each;
    const found = shelf.next(course.key, [each], (before) => {
      const { start, starts, end, ends } = endsOf(each);
      const on = course.wall;
      const now = [
        { mark: course.from.mark, at: start, atWall: from.wall, on, way: starts },
        { mark: course.to.mark, at: end, atWall: to.wall, on, way: ends },
      ] as const;
      return before !== undefined && alike(before, now) ? before : now;
    });
    return found;
  });
};

/** Where the posts of marks stand by the ends that meet there. */
const footingsOf = (ends: readonly End[]): Map<MarkId, Footing> => {
  const footings = new Map<MarkId, Footing>();
  for (const { mark, at, atWall, on, way } of ends) {
    const known = footings.get(mark);
    const ways = known === undefined ? [way] : [...known.ways, way];
    footings.set(mark, { at, atWall, on: wider(known?.on ?? null, on), ways });
  }
  return footings;
};

/** The mean of two directions; the first of more, or of two that are opposite. */
const through = (ways: readonly Radians[]): Radians => {
  const [a = radians(0), b = a] = ways;
  if (ways.length > 2) return a;
  const mean = { x: Math.cos(a) + Math.cos(b), y: Math.sin(a) + Math.sin(b) };
  return Math.hypot(mean.x, mean.y) < 1e-9 ? a : bearing({ x: 0, y: 0 }, mean);
};

const kindOf = (post: MarkPost, wall: boolean, burden: MarkBurden | undefined): Post['kind'] => {
  if (wall) return 'wall';
  const gated =
    burden !== undefined &&
    burden.gates.length > 0 &&
    (post.kind === 'end' || post.kind === 'bend');
  return gated ? 'gate' : post.kind;
};

const builtMarkPost = (
  post: MarkPost,
  { at, atWall, on, ways }: Footing,
  burden: MarkBurden | undefined,
): Post => {
  const bare: Bare = {
    id: post.id,
    kind: kindOf(post, atWall, burden),
    at,
    along: through(ways),
    lines: post.lines,
    gates: burden?.gates ?? [],
    above: inches(Math.max(post.above, burden?.above ?? 0)),
  };
  const { fabricHeight, leastDepth } = post;
  const demand = { fabricHeight, leaf: burden?.leaf ?? null, wall: on, leastDepth };
  const pipe = burden?.pipe ?? post.pipe;
  return built(bare, pipe, holeOf(pipe, demand), on);
};

type Marks = ReadonlyMap<MarkId, MarkPost>;
type Burdens = ReadonlyMap<MarkId, MarkBurden>;

const builtAt = (
  footings: ReadonlyMap<MarkId, Footing>,
  { marks, burdens }: { readonly marks: Marks; readonly burdens: Burdens },
  carry: Carry,
): readonly Post[] => {
  const known = carry.shelf<Post>('post at a mark');
  return [...footings].flatMap(([mark, footing]) => {
    const post = marks.get(mark);
    if (post === undefined) return [];
    const burden = burdens.get(mark);
    const { at, atWall, on, ways } = footing;
    const from = [post, burden, at.x, at.y, atWall, on, ...ways];
    return known.take(mark, from, () => builtMarkPost(post, footing, burden));
  });
};

/** The posts at the marks of one line. */
export interface LineMarkPosts {
  /** Those that no other line has. */
  readonly own: readonly Post[];
  /** Of these, the bends. */
  readonly bends: ReadonlySet<PostId>;
  /** The ids of those that it shares with other lines. */
  readonly shared: readonly PostId[];
}

interface LineBuilt extends LineMarkPosts {
  /** What it ends with at the marks that it shares. */
  readonly meets: readonly End[];
}

const ownBuilt = (
  seated: readonly SeatedCourse[],
  { marks, burdens }: { readonly marks: Marks; readonly burdens: Burdens },
  carry: Carry,
): LineBuilt => {
  const ends = courseEnds(seated, carry);
  const isShared = ({ mark }: End): boolean => (marks.get(mark)?.lines.length ?? 0) > 1;
  const meets = carry.shelf<readonly End[]>('shared ends').list('', ends.filter(isShared));
  const alone = meets.length === 0 ? ends : ends.filter((end) => !isShared(end));
  const burdened = alone.flatMap(({ mark }) => burdens.get(mark) ?? []);
  const own = carry
    .shelf<readonly Post[]>('posts at own marks')
    .part('', [marks, ...alone, ...burdened], (inner) =>
      builtAt(footingsOf(alone), { marks, burdens }, inner),
    );
  const bent = own.flatMap((post) => (post.kind === 'bend' ? [post.id] : []));
  const bends = carry.shelf<ReadonlySet<PostId>>('bends').take('', bent, () => new Set(bent));
  return {
    own,
    bends,
    meets,
    shared: [...new Set(meets.map(({ mark }): PostId => `post:${mark}`))],
  };
};

/**
 * The posts at marks, with holes and heights; not yet tagged: line by line, and those at which lines
 * meet. A mark on no run (a line of one mark) gets none: there is nothing to build.
 */
export const builtMarkPosts = (
  lines: readonly SeatedLine[],
  { marks, burdens: asked }: { readonly marks: Marks; readonly burdens: Burdens },
  carry: Carry,
): { readonly lines: readonly LineMarkPosts[]; readonly shared: ReadonlyMap<PostId, Post> } => {
  const settled = carry.shelf<MarkBurden>('burden');
  const burdens = new Map(
    [...asked].map(([mark, burden]) => [mark, settled.settle(mark, burden)] as const),
  );
  const shelf = carry.shelf<LineBuilt>('posts at the marks of a line');
  const all = lines.map(({ id, ends, seated }) => {
    const on = [...burdens].flatMap((burden) => (ends.has(burden[0]) ? burden : []));
    const from = [seated, marks, ...on];
    return shelf.part(id, from, (own) => ownBuilt(seated, { marks, burdens }, own));
  });
  const meets = all.flatMap((line) => line.meets);
  const shared = builtAt(footingsOf(meets), { marks, burdens }, carry);
  return { lines: all, shared: new Map(shared.map((post) => [post.id, post])) };
};
