import { openingText } from '../../drawing/opening/openingText.ts';
import { chainSide } from '../../drawing/plan/chainSide.ts';
import { drawPlan } from '../../drawing/plan/drawPlan.ts';
import { yardMiddle } from '../../drawing/plan/yardMiddle.ts';
import type { Primitive } from '../../drawing/primitive.ts';
import type { GateLayout, Layout, LineLayout } from '../../engine/layout.ts';
import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import type { DxfDimension, DxfThing } from './dxfThing.ts';
import type { DxfScale } from './dxfScale.ts';

type Chain = Extract<Primitive, { kind: 'dimension chain' }>;

/** From the pieces of a chain out to its total, and from a fence to the width of an opening; paper inches. */
const toTotal = 0.3;
const toOpening = 0.18;

/** How wide a letter of a plain CAD font is, in heights of a capital; about, from memory. */
const wide = 0.95;

const thing = (one: DxfDimension): DxfThing[] =>
  distance(one.from, one.to) < 1e-6 ? [] : [{ kind: 'dimension', layer: 'DIMENSIONS', ...one }];

/** Of neighbours whose texts are wider than they are every other stands under its line. */
const pieceThings = ({ points, texts, off }: Chain, { ratio, letter }: DxfScale): DxfThing[] => {
  let under = false;
  return texts.flatMap((said, n) => {
    // what is clear of an opening is a dimension of its own
    const [text = ''] = said.split('\n');
    const [from, to] = [points[n], points[n + 1]];
    if (from === undefined || to === undefined) return [];
    const fits = text.length * wide * letter < distance(from, to);
    const stands = !fits && under ? 'under' : 'over';
    under = !fits && !under;
    return thing({ from, to, off: off * ratio, text, stands });
  });
};

const totalThings = ({ points, total, off }: Chain, { ratio }: DxfScale): DxfThing[] => {
  const [from, to] = [points[0], points.at(-1)];
  if (total === null || from === undefined || to === undefined) return [];
  const out = (off + Math.sign(off) * toTotal) * ratio;
  return thing({ from, to, off: out, text: total, stands: 'over' });
};

const others = [
  ...(['ground', 'features', 'fence', 'posts', 'pins', 'gates', 'leaf rooms', 'marks'] as const),
  ...(['gate labels', 'tags', 'flags'] as const),
];

/** The chains that the plan of a sheet is drawn with, before they have a scale. */
const chainsOf = (site: Site, layout: Layout): Chain[] =>
  drawPlan(site, layout, { omit: others }).filter((one) => one.kind === 'dimension chain');

/** Where the inside faces of the posts of a gate stand; null where it is not placed. */
const facesOf = (gate: GateLayout, { posts }: Layout): readonly [SitePoint, SitePoint] | null => {
  if (gate.posts === null || !gate.placed) return null;
  const apart = distance(gate.start, gate.end);
  const [from, to] = [posts[gate.posts.start], posts[gate.posts.end]];
  if (from === undefined || to === undefined || apart === 0) return null;
  return [
    lerp(gate.start, gate.end, from.od / 2 / apart),
    lerp(gate.end, gate.start, to.od / 2 / apart),
  ];
};

const openingThings = (site: Site, layout: Layout, { ratio }: DxfScale): DxfThing[] => {
  const lines = Object.values<LineLayout>(layout.lines);
  const middle = yardMiddle(lines, site);
  return Object.values<GateLayout>(layout.gates).flatMap((gate) => {
    const faces = facesOf(gate, layout);
    const line = layout.lines[gate.line];
    if (faces === null || line === undefined) return [];
    const [from, to] = faces;
    const off = chainSide(line, middle) * toOpening * ratio;
    const text = openingText(inches(distance(from, to)), site.lengths);
    return thing({ from, to, off, text, stands: 'over' });
  });
};

/**
 * Every chain of the plan as dimensions: its pieces, from centre to centre of posts, and its total; and
 * every opening between the inside faces of its posts as they stand. Texts are those of the sheets, which
 * are rounded one by one from the hook and on a slope run along it; what is measured is in plan.
 */
export const dimensionThings = (site: Site, layout: Layout, scale: DxfScale): DxfThing[] => [
  ...chainsOf(site, layout).flatMap((chain) => [
    ...pieceThings(chain, scale),
    ...totalThings(chain, scale),
  ]),
  ...openingThings(site, layout, scale),
];
