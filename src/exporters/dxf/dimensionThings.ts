import { openingText } from '../../drawing/opening/openingText.ts';
import { chainSide } from '../../drawing/plan/chainSide.ts';
import { drawPlan } from '../../drawing/plan/drawPlan.ts';
import { yardMiddle } from '../../drawing/plan/yardMiddle.ts';
import type { Primitive } from '../../drawing/primitive.ts';
import type { GateLayout, Layout, LineLayout } from '../../engine/layout.ts';
import { readable } from '../../drawing/lettering/readable.ts';
import { bearing } from '../../geometry/bearing.ts';
import { distance } from '../../geometry/distance.ts';
import { lerp } from '../../geometry/lerp.ts';
import type { SitePoint } from '../../geometry/point.ts';
import type { Site } from '../../site/site.ts';
import { inches } from '../../units/inches.ts';
import type { DxfDimension, DxfThing } from './dxfThing.ts';
import type { DxfScale } from './dxfScale.ts';

type Chain = Extract<Primitive, { kind: 'dimension chain' }>;

/**
 * From one tier of a chain out to the next, so far that a text under a line is clear of one over the line
 * within, and from a fence to the width of an opening; paper inches.
 */
const toNextTier = 0.36;
const toOpening = 0.18;

/** How wide a letter of a plain CAD font is, in heights of a capital; about, from memory. */
const wide = 0.95;

const thing = (one: DxfDimension): DxfThing[] =>
  distance(one.from, one.to) < 1e-6 ? [] : [{ kind: 'dimension', layer: 'DIMENSIONS', ...one }];

/** A piece of a tier: its ends, and what it says. */
interface TierPiece {
  readonly from: SitePoint | undefined;
  readonly to: SitePoint | undefined;
  readonly said: string;
}

/** Of neighbours whose texts are wider than they are every other stands under its line. */
const tierThings = (
  pieces: readonly TierPiece[],
  off: number,
  { ratio, letter }: DxfScale,
): DxfThing[] => {
  let under = false;
  return pieces.flatMap(({ from, to, said }) => {
    // what is clear of an opening is a dimension of its own
    const [text = ''] = said.split('\n');
    if (from === undefined || to === undefined) return [];
    const fits = text.length * wide * letter < distance(from, to);
    const stands = !fits && under ? 'under' : 'over';
    under = !fits && !under;
    return thing({ from, to, off: off * ratio, text, stands });
  });
};

/** The tiers of a chain from the fence out: its bays, from terminal post to terminal post, its total. */
const tiersOf = ({ points, texts, stretches = [], total }: Chain): readonly TierPiece[][] =>
  [
    texts.map((said, n) => ({ from: points[n], to: points[n + 1], said })),
    stretches.map(({ from, to, text }) => ({ from: points[from], to: points[to], said: text })),
    total === null ? [] : [{ from: points[0], to: points.at(-1), said: total }],
  ].filter(({ length }) => length > 0);

const chainThings = (chain: Chain, scale: DxfScale): DxfThing[] =>
  tiersOf(chain).flatMap((pieces, n) =>
    tierThings(pieces, chain.off + Math.sign(chain.off) * n * toNextTier, scale),
  );

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
  const [from, to] = [posts.get(gate.posts.start), posts.get(gate.posts.end)];
  if (from === undefined || to === undefined || apart === 0) return null;
  return [
    lerp(gate.start, gate.end, from.od / 2 / apart),
    lerp(gate.end, gate.start, to.od / 2 / apart),
  ];
};

/** The side of a dimension line, `off` to the left of a way, that is nearer to what is measured. */
const towards = (from: SitePoint, to: SitePoint, off: number): DxfDimension['stands'] => {
  const along = bearing(from, to);
  const turned = Math.cos(readable(along) - along) < 0;
  return turned === off > 0 ? 'over' : 'under';
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
    // out of the way of what stands under the line of the bays
    return thing({ from, to, off, text, stands: towards(from, to, off) });
  });
};

/**
 * Every chain of the plan as dimensions in its tiers: bays, from centre to centre of posts, stretches from
 * terminal post to terminal post where the plan has that tier, and its total; and every opening between
 * the inside faces of its posts as they stand. Texts are those of the sheets, which are rounded one by one
 * from the hook and on a slope run along it; what is measured is in plan.
 */
export const dimensionThings = (site: Site, layout: Layout, scale: DxfScale): DxfThing[] => [
  ...chainsOf(site, layout).flatMap((chain) => chainThings(chain, scale)),
  ...openingThings(site, layout, scale),
];
