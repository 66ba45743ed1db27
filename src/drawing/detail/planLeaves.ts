import { moved } from '../../geometry/moved.ts';
import { radians } from '../../units/radians.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, polylineOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import type { Outline } from '../outline.ts';
import type { Pen } from '../pen.ts';
import type { GatePoint } from './alongGate.ts';
import { detailPens } from './detailPens.ts';
import { boxOutline, hiding, inked } from './drawn.ts';
import type { SightLeaf, SightSlide } from './gateSight.ts';
import type { OnPaper } from './onPaper.ts';

/** A pin as it is drawn, paper inches: its place is true. */
const pin = 0.025;

/** The direction of a leaf that has turned by so much, radians from along the gate. */
const leafAngle = ({ way }: SightLeaf, turned: number) => radians((way > 0 ? 0 : Math.PI) + turned);

/** The frame of a leaf from above when it has turned by so much, its four corners. */
const leafCorners = (leaf: SightLeaf, turned: number): GatePoint[] => {
  const { hung, width, thickness } = leaf.laid;
  const angle = leafAngle(leaf, turned);
  const across = radians(angle + Math.PI / 2);
  const [near, far] = [moved(leaf.pin, angle, hung), moved(leaf.pin, angle, hung + width)];
  const half = thickness / 2;
  return [
    moved(near, across, half),
    moved(far, across, half),
    moved(far, across, -half),
    moved(near, across, -half),
  ];
};

const frameOutline = (leaf: SightLeaf, turned: number, on: OnPaper): Outline =>
  polylineOutline(leafCorners(leaf, turned).map(on), true);

/** A leaf at so much of its turn, with the piece of its hinge from the pin. */
export const turnedLeaf = (leaf: SightLeaf, turned: number, on: OnPaper, pen: Pen): Atom[] => {
  const near = moved(leaf.pin, leafAngle(leaf, turned), leaf.laid.hung);
  return [
    inked(pen, frameOutline(leaf, turned, on)),
    inked(pen, segmentsOutline([[on(leaf.pin), on(near)]])),
  ];
};

/** Where a leaf swings: open, broken, and the way of its free end. */
export const swingAtoms = (leaf: SightLeaf, on: OnPaper, ratio: number): Atom[] => {
  const { hung, width, turns } = leaf.laid;
  const { x, y } = on(leaf.pin);
  const radius = (hung + width) / ratio;
  const start = leafAngle(leaf, 0);
  const tip = on(moved(leaf.pin, start, hung + width));
  const arc: Outline = [
    { go: 'move', ...tip },
    { go: 'arc', x, y, radius, start, sweep: turns },
  ];
  return [...turnedLeaf(leaf, turns, on, detailPens.opened), inked(detailPens.way, arc)];
};

/** A leaf that turns, closed, on its pin. */
export const closedLeaf = (leaf: SightLeaf, on: OnPaper): Atom[] => [
  ...hiding(detailPens.frame, frameOutline(leaf, 0, on)),
  ...hiding(detailPens.hinge, circleOutline(on(leaf.pin), pin)),
];

const slideBox = (
  { aside, laid }: SightSlide,
  [from, to]: readonly [number, number],
  on: OnPaper,
): Outline =>
  boxOutline(
    on({ x: from, y: aside - laid.thickness / 2 }),
    on({ x: to, y: aside + laid.thickness / 2 }),
  );

/** Where a leaf that rolls stands when it is rolled aside: broken. */
export const storedSlide = (slide: SightSlide, on: OnPaper): Atom =>
  inked(detailPens.opened, slideBox(slide, slide.stored, on));

/** A leaf that rolls, closed. */
export const closedSlide = (slide: SightSlide, on: OnPaper): Atom[] =>
  hiding(detailPens.frame, slideBox(slide, slide.closed, on));
