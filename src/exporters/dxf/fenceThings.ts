import { leafTip } from '../../engine/gate/swing.ts';
import type {
  GateLayout,
  Layout,
  LeafLayout,
  LineLayout,
  SlideLayout,
} from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { chainSide } from '../../drawing/plan/chainSide.ts';
import { yardMiddle } from '../../drawing/plan/yardMiddle.ts';
import { moved } from '../../geometry/moved.ts';
import { openingText } from '../../drawing/opening/openingText.ts';
import { radians } from '../../units/radians.ts';
import type { DxfScale } from './dxfScale.ts';
import type { DxfCorner, DxfThing } from './dxfThing.ts';

const straight = (...points: readonly SitePoint[]): DxfCorner[] =>
  points.map((at) => ({ at, bow: 0 }));

const lineThings = ({ legs }: LineLayout, closed: boolean): DxfThing[] => {
  const last = legs.at(-1);
  if (last === undefined) return [];
  const corners = legs.map(({ start, bow }) => ({ at: start, bow }));
  const end = closed ? [] : straight(last.end);
  return [{ kind: 'path', layer: 'FENCE', corners: [...corners, ...end], closed }];
};

/** The pipe at its actual size, its hole, and its tag beside it. */
const postThings = ({ at, od, hole, tag }: Post): DxfThing[] => [
  { kind: 'circle', layer: 'POSTS', at, radius: od / 2 },
  ...(hole.depth > 0
    ? [{ kind: 'circle', layer: 'HOLES', at, radius: hole.diameter / 2 } as const]
    : []),
  { kind: 'text', layer: 'POST-TAGS', at: { x: at.x + od, y: at.y + od }, text: tag },
];

const leafThings = (leaf: LeafLayout): DxfThing[] => {
  const { hinge: at, hung, width, closed: start, turns: sweep } = leaf;
  const [shut, open] = [leafTip(leaf, radians(0)), leafTip(leaf, sweep)];
  return [
    { kind: 'path', layer: 'GATES', corners: straight(at, shut), closed: false },
    { kind: 'path', layer: 'GATE-SWINGS', corners: straight(at, open), closed: false },
    { kind: 'arc', layer: 'GATE-SWINGS', at, radius: hung + width, start, sweep },
  ];
};

const slideThings = ({ closed, stored }: SlideLayout): DxfThing[] => [
  { kind: 'path', layer: 'GATES', corners: straight(closed.start, closed.end), closed: false },
  {
    kind: 'path',
    layer: 'GATE-SWINGS',
    corners: straight(stored.start, stored.end),
    closed: false,
  },
];

/** Leaves closed, and where they go, its name `clear` inches to the left of it; a gate that does not fit is not built and not written. */
const gateThings = (layout: GateLayout, gate: Gate | undefined, site: Site, clear: number) => {
  if (!layout.placed) return [];
  const at = moved(layout.middle, radians(layout.bearing + Math.PI / 2), clear);
  const label = gate?.label.trim() ?? '';
  const held = `opening ${openingText(layout.opening.target, site.lengths)}`;
  return [
    ...layout.leaves.flatMap(leafThings),
    ...layout.slides.flatMap(slideThings),
    { kind: 'text', layer: 'GATES', at, text: `${label || 'Gate'}, ${held}` },
  ] satisfies DxfThing[];
};

/** From a gate to its name on the side that its dimensions leave free, heights of a letter. */
const toName = 2;

/** Fence lines with their curves, posts at their actual size, holes, gates and their swings. */
export const fenceThings = (site: Site, layout: Layout, { letter }: DxfScale): DxfThing[] => {
  const { lines, posts, gates } = layout;
  const all = Object.values<LineLayout>(lines);
  const middle = yardMiddle(all, site);
  return [
    ...all.flatMap((line) => lineThings(line, site.lines[line.id]?.closed ?? false)),
    ...Object.values<Post>(posts).flatMap(postThings),
    ...Object.values<GateLayout>(gates).flatMap((gate) => {
      const line = lines[gate.line];
      const side = line === undefined ? 1 : chainSide(line, middle);
      return gateThings(gate, site.gates[gate.id], site, -side * toName * letter);
    }),
  ];
};
