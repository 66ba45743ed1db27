import { slack } from '../../geometry/tolerance.ts';
import type { Gate } from '../../site/gate.ts';
import type { HardwareId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Inches } from '../../units/inches.ts';
import { leavesOf } from '../gate/termsOf.ts';
import type { GateLayout, Layout } from '../layout.ts';
import { hungEnd, postName } from '../set/postName.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A part of a gate against one thing that it is fixed to. Outside diameters in inches. */
export interface FitRow {
  readonly role: 'hinge' | 'latch' | 'closer';
  readonly part: HardwareId;
  readonly label: string;
  readonly against: 'post' | 'frame';
  /** What it is fixed to, in words: `the hinge post`, `the frame of leaf 2`. */
  readonly on: string;
  /** Null where the gate has no post there, where that is square, or nobody has said what the frame is of. */
  readonly od: Inches | null;
  /** What the part is made for; null where nobody has said. */
  readonly low: Inches | null;
  readonly high: Inches | null;
  /** Null where one of the two is not known: ask. */
  readonly fits: boolean | null;
}

type Mount = Pick<FitRow, 'against' | 'on' | 'od'>;
type End = 'start' | 'end';

const otherEnd = { start: 'end', end: 'start' } as const;

/** The posts and frames of a gate as they can be fixed to. */
const mountsFor = (gate: Gate, laid: GateLayout, { posts }: Pick<Layout, 'posts'>) => {
  const leaves = leavesOf(gate);
  const post = (end: End): Mount => {
    const id = laid.posts?.[end];
    const stands = id === undefined ? undefined : posts.get(id);
    // what parts are made for is told of round posts
    const od = stands?.section === 'round' ? stands.od : null;
    return { against: 'post', on: postName(gate, end), od };
  };
  const frame = (n: number): Mount => ({
    against: 'frame',
    on: leaves.length > 1 ? phrase`the frame of leaf ${n + 1}` : phrase`the frame of the leaf`,
    od: leaves[n]?.frame?.od ?? null,
  });
  return { post, frame, leaves };
};

const against = (
  site: Site,
  role: FitRow['role'],
  id: HardwareId | null,
  mounts: readonly Mount[],
): FitRow[] => {
  const part = id === null ? undefined : site.hardware[id];
  if (id === null || part === undefined) return [];
  return mounts.map((mount) => {
    const { low = null, high = null } = part.fits[mount.against] ?? {};
    const { od } = mount;
    const known = od !== null && low !== null && high !== null;
    const fits = known ? od >= low - slack && od <= high + slack : null;
    return { role, part: id, label: part.label, ...mount, low, high, fits };
  });
};

/**
 * Every hinge, latch and closer of a gate against the posts as they are laid out and the frames of
 * its leaves: a hinge and a closer against the post and the frame of their leaf, a latch against
 * every frame and, where a single leaf meets a post, that post. None for a gap.
 */
export const fitsOf = (
  site: Site,
  layout: Pick<Layout, 'posts'>,
  laid: GateLayout,
): readonly FitRow[] => {
  const gate = site.gates[laid.id];
  if (gate === undefined) return [];
  const { post, frame, leaves } = mountsFor(gate, laid, layout);
  const hung = leaves.length > 1 ? (['start', 'end'] as const) : ([hungEnd(gate)] as const);
  const frames = leaves.map((_, n) => frame(n));
  const met = leaves.length === 1 ? [post(otherEnd[hungEnd(gate)])] : [];
  return [
    ...leaves.flatMap(({ hinge }, n) =>
      against(site, 'hinge', hinge, [post(hung[n] ?? 'end'), frame(n)]),
    ),
    ...against(site, 'latch', gate.latch, [...met, ...frames]),
    ...leaves.flatMap((_, n) =>
      against(site, 'closer', gate.closer, [post(hung[n] ?? 'end'), frame(n)]),
    ),
  ];
};
