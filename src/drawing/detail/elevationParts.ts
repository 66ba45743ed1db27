import type { Site } from '../../site/site.ts';
import { rodReach } from '../../engine/gate/rodReach.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { catches } from './catches.ts';
import { detailPens } from './detailPens.ts';
import { boxOutline, hiding, inked } from './drawn.ts';
import type { GateSight } from './gateSight.ts';
import type { OnPaper } from './onPaper.ts';

/** Half of how high a latch is drawn, and a roller's radius: paper inches; their places are true. */
const latchHalf = 0.025;
const roller = 0.03;

/** How high the latch is: what releases it where that is said, else the middle of the leaf; inches. */
const latchHeight = ({ gate, leaves, slides }: GateSight): number => {
  const [hung] = [...leaves, ...slides];
  return gate.latchHeight ?? (hung === undefined ? 0 : hung.bottom + hung.height / 2);
};

const latchAtoms = (sight: GateSight, on: OnPaper): Atom[] =>
  catches(sight).flatMap(([from, to]) => {
    const y = latchHeight(sight);
    const [a, b] = [on({ x: from, y }), on({ x: to, y })];
    const outline = boxOutline({ x: a.x, y: a.y - latchHalf }, { x: b.x, y: b.y + latchHalf });
    return hiding(detailPens.latch, outline);
  });

/** True of two leaves of which one is held at the ground. */
const hasRod = ({ gate, leaves }: GateSight, site: Site): boolean => {
  const latch = gate.latch === null ? undefined : site.hardware[gate.latch];
  const meet = gate.way.kind === 'swing' && leaves.length > 1;
  return meet && (gate.receiver !== null || latch?.kind === 'drop rod');
};

/** The rod on the leaf nearer to the start, from half way up it down into its receiver, or to the ground. */
const rodAtoms = (sight: GateSight, on: OnPaper): Atom[] => {
  const [leaf] = sight.leaves;
  if (leaf === undefined) return [];
  const { receiver, bottom } = sight.gate;
  const goes = receiver === null || bottom === null ? 0 : Math.max(0, rodReach(receiver, bottom));
  const x = leaf.to;
  const [top, foot] = [on({ x, y: leaf.bottom + leaf.height / 2 }), on({ x, y: 0 - goes })];
  return [inked(detailPens.rod, segmentsOutline([[top, foot]]))];
};

/** What the rod drops into: the hole that is made for it. */
export const receiverAtoms = ({ receiver, gate }: GateSight, on: OnPaper): Atom[] => {
  if (receiver === null) return [];
  const { at, hole } = receiver;
  const outline = (wide: number) =>
    boxOutline(on({ x: at.x - wide / 2, y: 0 }), on({ x: at.x + wide / 2, y: -hole.depth }));
  const inside = gate.receiver?.inside ?? hole.diameter;
  return [
    ...hiding(detailPens.receiver, outline(hole.diameter)),
    ...(inside < hole.diameter ? [inked(detailPens.receiver, outline(inside))] : []),
  ];
};

/** Rollers at the top and the bottom of a leaf that rolls, on each of its roller posts. */
const rollerAtoms = ({ slides, stands }: GateSight, on: OnPaper): Atom[] => {
  const posts = stands.filter(({ post }) => post.kind === 'roller');
  const [hung] = slides;
  if (hung === undefined) return [];
  return posts.flatMap(({ at }) =>
    [hung.bottom, hung.bottom + hung.height].flatMap((z) =>
      hiding(detailPens.roller, circleOutline(on({ x: at.x, y: z }), roller)),
    ),
  );
};

/** Latch, drop rod and rollers of a gate, over its leaves. */
export const elevationParts = (sight: GateSight, site: Site, on: OnPaper): Atom[] => [
  ...latchAtoms(sight, on),
  ...(hasRod(sight, site) ? rodAtoms(sight, on) : []),
  ...rollerAtoms(sight, on),
];
