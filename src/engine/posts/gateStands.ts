import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Gate } from '../../site/gate.ts';
import type { PostPipe } from '../../site/postPipe.ts';
import type { Site } from '../../site/site.ts';
import { holdOpenPost, rollerPost } from '../../trade/gateStands.ts';
import { fencePipes } from '../../trade/pipes.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import { radians } from '../../units/radians.ts';
import { rollEnds, type RollEnd } from '../gate/slide.ts';
import { leafTip } from '../gate/swing.ts';
import type { GateLayout, Layout } from '../layout.ts';
import type { Post, PostId } from '../post.ts';
import { deepened } from './deepened.ts';
import { holeFor } from './holeFor.ts';
import { phrase } from '../../phrases/phrase.ts';

type Kind = 'roller' | 'hold-open' | 'stop';
type StandPost = Post & { readonly kind: Kind };

/** A gate that is placed, with all that its posts beside the fence follow from. */
interface Placed {
  readonly gate: Gate;
  readonly layout: GateLayout;
  readonly spec: FenceSpec;
  /** The outside diameters of the two posts of its opening, inches. */
  readonly ods: Readonly<Record<'start' | 'end', Inches>>;
}

/** What such a post is made of, as far as its hole and its drawing ask for it. */
type StandPipe = Pick<PostPipe, 'label' | 'od' | 'section'>;

/** The pipe of the roller posts of a gate: that of its own gate posts where they are said. */
export const rollerPipe = ({ post }: Pick<Gate, 'post'>): StandPipe =>
  post ?? { ...rollerPost.post, section: 'round' };

const standing = (
  { layout, spec }: Placed,
  kind: Kind,
  post: StandPipe,
  places: readonly (readonly [id: PostId, at: SitePoint])[],
): StandPost[] => {
  const { label: pipe, od, section } = post;
  const { fabricHeight, leastDepth } = spec;
  const hole = deepened(holeFor({ post, fabricHeight, leaf: null, wall: null }), null, leastDepth);
  // as high as the gate posts: so latches meet a stop wherever on their leaves they are
  const high = inches(spec.fabricHeight + spec.terminalAbove);
  const above = kind === 'hold-open' ? holdOpenPost.above : high;
  return places.map(([id, at]) => ({
    id,
    tag: '',
    kind,
    at,
    along: layout.bearing,
    od,
    section,
    pipe,
    lines: [layout.line],
    gates: [layout.id],
    above,
    hole,
    wall: null,
    length: inches(above + hole.depth),
  }));
};

/**
 * The roller posts behind one end of an opening. The first stands with its inside face in line with
 * the inside face of the gate post; where it would touch that post, the gate post is the first.
 */
const rollerPlaces = (placed: Placed, roll: RollEnd): (readonly [PostId, SitePoint])[] => {
  const { gate, layout, ods } = placed;
  if (gate.way.kind !== 'cantilever') return [];
  const { behind, rollers } = gate.way;
  const { od } = rollerPipe(gate);
  const own = ods[roll.end];
  const one = behind < (od + own) / 2;
  const line = moved(roll.face, roll.aside, behind);
  const first = moved(line, roll.into, -(one ? own : od) / 2);
  const second = moved(first, roll.into, -rollers);
  const id = (n: number): PostId => `post:${layout.id}:roller:${roll.end}:${n}`;
  return one
    ? [[id(2), second]]
    : [
        [id(1), first],
        [id(2), second],
      ];
};

/** Where the post stands that a leaf comes to rest against when it is open. */
const holdOpenPlaces = ({ gate, layout }: Placed, od: Inches): (readonly [PostId, SitePoint])[] =>
  gate.holdOpen
    ? layout.leaves.map((leaf) => {
        const past = radians(leaf.open + Math.sign(leaf.turns) * (Math.PI / 2));
        const tip = moved(leafTip(leaf, leaf.turns), past, (leaf.thickness + od) / 2);
        return [`post:${layout.id}:${leaf.id}:hold-open`, tip];
      })
    : [];

/** The post that two leaves latch to: of the pipe that is as wide as the stop, where there is one. */
const stopPipe = (stop: Inches): StandPipe => {
  const label =
    fencePipes.find(({ od }) => od === stop)?.label ??
    phrase`${formatLength(stop, { system: 'inches', fraction: 32 })} across`;
  return { label, od: stop, section: 'round' };
};

const centreStops = (placed: Placed): StandPost[] => {
  const { gate, layout } = placed;
  if (gate.way.kind !== 'centre stop' || layout.stop === null) return [];
  const pipe = stopPipe(gate.way.stop);
  return standing(placed, 'stop', pipe, [[`post:${layout.id}:stop`, layout.stop]]);
};

const standsOf = (placed: Placed): StandPost[] => {
  const { gate, layout, spec, ods } = placed;
  const faces = {
    start: moved(layout.start, layout.bearing, ods.start / 2),
    end: moved(layout.end, layout.bearing, -ods.end / 2),
    bearing: layout.bearing,
  };
  const rollers = rollEnds(gate, faces).flatMap((roll) => rollerPlaces(placed, roll));
  return [
    ...standing(placed, 'roller', rollerPipe(gate), rollers),
    ...standing(placed, 'hold-open', spec.linePost, holdOpenPlaces(placed, spec.linePost.od)),
    ...centreStops(placed),
  ];
};

/** Tags that no post of a run has: a letter for the kind, then numbers. */
const lettered: Readonly<Record<Kind, string>> = {
  roller: 'R',
  'hold-open': 'H',
  stop: 'S',
};

/**
 * The posts that stand for the gates besides those of their openings: roller posts, posts that hold
 * a leaf open, and stops between two leaves. Each has a hole of its own; no fence hangs from them. Only for gates that are placed.
 */
export const gateStands = (
  site: Site,
  gates: readonly GateLayout[],
  posts: Layout['posts'],
): Post[] => {
  const counts = { roller: 0, 'hold-open': 0, stop: 0 };
  return gates.flatMap((layout) => {
    const gate = site.gates[layout.id];
    const spec = site.specs[site.lines[layout.line]?.spec ?? 'spec:'];
    const [start, end] = [layout.posts?.start, layout.posts?.end].map((id) =>
      id === undefined ? undefined : posts.get(id)?.od,
    );
    if (gate === undefined || spec === undefined || start === undefined || end === undefined) {
      return [];
    }
    return standsOf({ gate, layout, spec, ods: { start, end } }).map(({ kind, ...post }) => ({
      ...post,
      kind,
      tag: `${lettered[kind]}${(counts[kind] += 1)}`,
    }));
  });
};
