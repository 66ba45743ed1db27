import type { GateLayout, LeafLayout, SlideLayout } from '../../engine/layout.ts';
import { leafTip } from '../../engine/gate/swing.ts';
import { distance } from '../../geometry/distance.ts';
import { moved } from '../../geometry/moved.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Gate } from '../../site/gate.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { radians } from '../../units/radians.ts';
import { openingText } from '../opening/openingText.ts';
import type { PenName } from '../pens.ts';
import type { Primitive } from '../primitive.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What is drawn of a leaf: where it is wanted, and the ground it takes to get there. */
interface LeafPens {
  readonly leaf: PenName;
  readonly way: PenName;
}

const line = (points: readonly SitePoint[], pen: PenName): Primitive => ({
  kind: 'polyline',
  points,
  closed: false,
  pen,
});

const drawSwing = (leaf: LeafLayout, pens: LeafPens): Primitive[] => {
  const { hinge, hung, width, closed, turns } = leaf;
  const shut = radians(closed);
  return [
    { kind: 'arc', centre: hinge, radius: hung + width, start: shut, sweep: turns, pen: pens.way },
    line([hinge, leafTip(leaf, turns)], pens.leaf),
    line([hinge, leafTip(leaf, radians(0))], pens.way),
  ];
};

/** A leaf that rolls, closed, and the outline of where it stands when it is rolled aside. */
const drawSlide = ({ closed, stored, thickness }: SlideLayout, pens: LeafPens): Primitive[] => {
  const { start, end } = stored;
  const long = distance(start, end) || 1;
  const across = {
    x: (-(end.y - start.y) / long) * (thickness / 2),
    y: ((end.x - start.x) / long) * (thickness / 2),
  };
  const beside = ({ x, y }: SitePoint, side: 1 | -1): SitePoint => ({
    x: x + side * across.x,
    y: y + side * across.y,
  });
  const outline = [beside(start, 1), beside(end, 1), beside(end, -1), beside(start, -1)];
  return [
    { kind: 'polyline', points: outline, closed: true, pen: pens.way },
    line([closed.start, closed.end], pens.leaf),
  ];
};

const dot = (centre: SitePoint, radius: number): Primitive => ({
  kind: 'circle',
  centre,
  radius,
  least: 0.03,
  pen: 'gate',
  ink: 'gate',
});

/**
 * The leaves of a gate and the ground that they turn or roll over, about the pins that they turn
 * on, and what a drop rod drops into; its posts are drawn with the others. A gap is open. A gate that
 * does not fit is a ghost.
 */
export const drawGate = (gate: GateLayout): readonly Primitive[] => {
  const { placed, leaves, slides, start, end, receiver } = gate;
  const pens: LeafPens = placed
    ? { leaf: 'leaf', way: 'swing' }
    : { leaf: 'fence ghost', way: 'guide' };
  const moving = [
    ...leaves.flatMap((leaf) => drawSwing(leaf, pens)),
    ...slides.flatMap((slide) => drawSlide(slide, pens)),
  ];
  if (!placed) return [...moving, line([start, end], 'stop')];
  return [...moving, ...(receiver === null ? [] : [dot(receiver.at, receiver.hole.diameter / 2)])];
};

/** How deep into its swing the name of a gate stands, as a share of its widest leaf. */
const deep = 0.42;

/** Where the name of a gate stands off its opening, inches to the left of the leg. */
const nameOff = ({ leaves, slides, opening }: GateLayout, gate: Gate | undefined): number => {
  const side = gate?.opens === 'right' ? -1 : 1;
  // what rolls lies along its own side of the fence: the name goes to the other
  if (slides.length > 0) return -side * Math.max(0, opening.target) * deep;
  const widest = Math.max(0, ...leaves.map(({ width }) => width));
  return side * deep * (widest > 0 ? widest : Math.max(0, opening.target));
};

/** What a gate is called and the clear opening to hold, in the ground that its leaves swing over. */
export const gateLabel = (
  layout: GateLayout,
  gate: Gate | undefined,
  style: LengthStyle,
): Primitive => {
  const { bearing, middle, placed, opening } = layout;
  const label = gate?.label.trim() ?? '';
  const held = phrase`opening ${openingText(opening.target, style)}`;
  return {
    kind: 'text',
    at: moved(middle, radians(bearing + Math.PI / 2), nameOff(layout, gate)),
    text: `${label === '' ? phrase`Gate` : label}\n${placed ? held : phrase`does not fit here`}`,
    size: 0.15,
    rise: 0,
    angle: radians(0),
    ink: placed ? 'gate' : 'stop',
    weight: 'bold',
    far: 'rather',
  };
};
