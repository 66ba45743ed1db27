import type { Meeting } from '../../engine/sweep/meetings.ts';
import type { Site } from '../../site/site.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { labelSize } from '../lettering/label.ts';
import { catches } from './catches.ts';
import { detailLook, type DetailLabel } from './detailLabel.ts';
import { joined, type DetailPart } from './detailPart.ts';
import { detailPens } from './detailPens.ts';
import { hiding, inked } from './drawn.ts';
import type { GateSight, SightPost } from './gateSight.ts';
import { alongGate } from './alongGate.ts';
import { onPaper, type OnPaper } from './onPaper.ts';
import { closedLeaf, closedSlide, storedSlide, swingAtoms, turnedLeaf } from './planLeaves.ts';
import { holeCircle, postCircle } from './planPosts.ts';
import { planSizes } from './planSizes.ts';

const upright = radians(0);

/** How far from its hole a tag is tried, paper inches, and in how many directions. */
const rings = [0.04, 0.1, 0.2, 0.35] as const;
const directions = 16;

/** The tag of a post beside its hole, first on the side away from the leaves. */
const tagLabel = (
  { post, at }: SightPost,
  on: OnPaper,
  ratio: number,
  side: 1 | -1,
): DetailLabel => {
  const look = detailLook(post.tag, 'bold');
  const { width, height } = labelSize(look);
  const middle = on(at);
  const radius = Math.max(post.hole.diameter, post.od) / 2 / ratio;
  const places = rings.flatMap((ring) =>
    Array.from({ length: directions }, (_, n) => {
      // to and fro from straight away
      const turn = (Math.ceil(n / 2) * (n % 2 === 0 ? 1 : -1) * 2 * Math.PI) / directions;
      const [across, down] = [Math.sin(turn), side * Math.cos(turn)];
      return {
        at: {
          x: middle.x + across * (radius + ring + width / 2),
          y: middle.y + down * (radius + ring + height / 2),
        },
        angle: upright,
      };
    }),
  );
  return { look, places, need: 'must' };
};

const latchAtoms = (sight: GateSight, on: OnPaper): Atom[] => {
  const aside = sight.slides[0]?.aside ?? 0;
  const gaps = catches(sight).map(
    ([from, to]) => [on({ x: from, y: aside }), on({ x: to, y: aside })] as const,
  );
  return gaps.length === 0 ? [] : [inked(detailPens.latch, segmentsOutline(gaps))];
};

const receiverAtoms = ({ receiver }: GateSight, on: OnPaper, ratio: number): Atom[] =>
  receiver === null
    ? []
    : hiding(
        detailPens.receiver,
        circleOutline(on(receiver.at), receiver.hole.diameter / 2 / ratio),
      );

/** What stops a leaf before it is open: the leaf where it is then, and a cross at what it meets. */
const metAtoms = (sight: GateSight, meeting: Meeting | null, on: OnPaper): Atom[] => {
  const leaf = meeting === null ? undefined : sight.leaves[meeting.leaf];
  if (meeting === null || leaf === undefined) return [];
  const { x, y } = on(alongGate(sight.pair[0].post, sight.laid.bearing)(meeting.at));
  const turned = Math.sign(leaf.laid.turns) * meeting.turned;
  const cross = [
    [
      { x: x - 0.06, y: y - 0.06 },
      { x: x + 0.06, y: y + 0.06 },
    ],
    [
      { x: x - 0.06, y: y + 0.06 },
      { x: x + 0.06, y: y - 0.06 },
    ],
  ] as const;
  return [
    ...turnedLeaf(leaf, turned, on, { ...detailPens.opened, ink: 'stop' }),
    inked(detailPens.met, segmentsOutline(cross)),
  ];
};

/** The side of the paper away from where the leaves open or roll: there is room for dimensions. */
const awayFrom = ({ gate }: GateSight): 1 | -1 => (gate.opens === 'left' ? 1 : -1);

/** How far out holes and frames reach on a side, paper inches. */
const reachOn = (sight: GateSight, side: 1 | -1, ratio: number): number =>
  Math.max(
    0,
    ...[...sight.pair, ...sight.stands].map(
      ({ at, post }) => (-side * at.y + Math.max(post.od, post.hole.diameter) / 2) / ratio,
    ),
  );

/**
 * The same gate from above at the same scale, aligned with its elevation, who looks at that standing at the foot
 * of the paper: posts in their holes, leaves closed and, broken, open or rolled aside, arcs, pins, latch,
 * receiver, the opening to hold, and what is clear with the leaves open. `stop` is what a leaf meets before it
 * is open.
 */
export const gatePlan = (
  sight: GateSight,
  site: Site,
  ratio: number,
  stop: Meeting | null,
): DetailPart => {
  const on = onPaper(ratio);
  const side = awayFrom(sight);
  const posts = [...sight.pair, ...sight.stands];
  const atoms = [
    ...posts.map((post) => holeCircle(post, on, ratio)),
    ...sight.slides.map((slide) => storedSlide(slide, on)),
    ...sight.leaves.flatMap((leaf) => swingAtoms(leaf, on, ratio)),
    ...posts.flatMap((post) => postCircle(post, on, ratio)),
    ...receiverAtoms(sight, on, ratio),
    ...sight.slides.flatMap((slide) => closedSlide(slide, on)),
    ...sight.leaves.flatMap((leaf) => closedLeaf(leaf, on)),
    ...latchAtoms(sight, on),
    ...metAtoms(sight, stop, on),
  ];
  const sizes = planSizes({ sight, site, on, side, free: reachOn(sight, side, ratio) });
  const tags = posts.map((post) => tagLabel(post, on, ratio, side));
  return joined([{ atoms, labels: [] }, sizes, { atoms: [], labels: tags }]);
};
