import type { SitePoint } from '../geometry/point.ts';
import type { GateId, LineId } from '../site/ids.ts';
import type { PostPipe } from '../site/postPipe.ts';
import type { WallTop } from '../site/wallTop.ts';
import type { Inches } from '../units/inches.ts';
import type { Radians } from '../units/radians.ts';

/**
 * `post:` and the mark, gate end or bay that it stands at: the same post keeps its id while
 * other things change.
 */
export type PostId = `post:${string}`;

/** One post to be set, and the hole it needs. Lengths in inches. */
export interface Post {
  readonly id: PostId;
  /** What the sheets call it: letters for terminals, numbers for line posts, unique on a site. */
  readonly tag: string;
  /**
   * `wall` ends the fence at a wall; `junction` joins lines; `bend` is a line post at a bend;
   * `pull` parts a stretch that is too long to be stretched at once.
   * `roller` posts carry a leaf that rolls, `hold-open` posts hold a leaf that stands open, a
   * `stop` stands between two leaves that latch to it: no fence hangs from these, and they are on
   * no run.
   */
  readonly kind:
    | ('end' | 'wall' | 'corner' | 'junction' | 'gate' | 'bend' | 'line' | 'pull')
    | ('roller' | 'hold-open' | 'stop');
  readonly at: SitePoint;
  /** Direction of the fence through the post (the bisector at a turn). */
  readonly along: Radians;
  readonly od: Inches;
  /** Round, or square with `od` for its side, two faces of it along the fence. */
  readonly section: PostPipe['section'];
  readonly pipe: string;
  /** Every line that the post serves, in the order of their ids. */
  readonly lines: readonly LineId[];
  /** Every gate hung from or latched to it, in the order of their ids. */
  readonly gates: readonly GateId[];
  readonly above: Inches;
  /** In the ground, or a core in the wall; with no depth it is the side of a plate on the wall. */
  readonly hole: { readonly diameter: Inches; readonly depth: Inches; readonly source: string };
  /** The wall or kerb that it stands on, `above` over its top; null for the ground. */
  readonly wall: WallTop | null;
  /** Length of pipe to cut: above ground plus hole depth. */
  readonly length: Inches;
}

const besides: readonly Post['kind'][] = ['roller', 'hold-open', 'stop'];
const plain: readonly Post['kind'][] = ['line', 'bend', ...besides];

/** Posts that fabric is stretched from. */
export const isTerminal = (post: Post): boolean => !plain.includes(post.kind);

/** Posts that stand for a gate and are neither of the two of its opening nor of any run. */
export const standsByGate = ({ kind }: Pick<Post, 'kind'>): boolean => besides.includes(kind);

/** Posts by their ids, in the order of their tags as runs meet them. */
export type Posts = Pick<ReadonlyMap<PostId, Post>, 'get' | 'has' | 'size' | 'values'>;
