import type { GateLayout, Layout, LineLayout } from '../../engine/layout.ts';
import type { Post } from '../../engine/post.ts';
import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { chainSide } from '../../drawing/plan/chainSide.ts';
import { drawFence } from '../../drawing/plan/drawFence.ts';
import { drawGate } from '../../drawing/plan/drawGate.ts';
import { drawPost } from '../../drawing/plan/drawPost.ts';
import { infillOn } from '../../drawing/plan/infillOn.ts';
import { yardMiddle } from '../../drawing/plan/yardMiddle.ts';
import type { Primitive } from '../../drawing/primitive.ts';
import { moved } from '../../geometry/moved.ts';
import { openingText } from '../../drawing/opening/openingText.ts';
import { radians } from '../../units/radians.ts';
import { drawnThings } from './drawnThings.ts';
import type { DxfLayer } from './dxfLayers.ts';
import type { DxfScale } from './dxfScale.ts';
import type { DxfThing } from './dxfThing.ts';
import { phrase } from '../../phrases/phrase.ts';

/** What the posts of a fence line are set out along, through its gates, curves as curves. */
const lineThings = ({ legs }: LineLayout, closed: boolean): DxfThing[] => {
  const last = legs.at(-1);
  if (last === undefined) return [];
  const corners = legs.map(({ start, bow }) => ({ at: start, bow }));
  const end = closed ? [] : [{ at: last.end, bow: 0 }];
  return [{ kind: 'path', layer: 'FENCE-LINE', corners: [...corners, ...end], closed }];
};

/** What hangs from post to post, as the plan draws it; a line that could not be laid out has none. */
const bayThings = (line: LineLayout, site: Site, layout: Layout): DxfThing[] =>
  drawnThings(
    line.runs.flatMap((run) => drawFence(run, layout, infillOn(site, line.id))),
    'FENCE-BAYS',
  );

const postLayer = (drawn: Primitive): DxfLayer =>
  drawn.kind === 'circle' && drawn.ink === 'post' ? 'POSTS' : 'HOLES';

/** The pipe at its actual size and its hole as the plan draws them, where one is dug, and its tag beside it. */
const postThings = (post: Post): DxfThing[] => {
  const { at, od, hole, tag } = post;
  const drawn = drawPost(post, undefined).flatMap((one) => drawnThings([one], postLayer(one)));
  return [
    ...drawn.filter(({ layer }) => layer === 'POSTS' || hole.depth > 0),
    { kind: 'text', layer: 'POST-TAGS', at: { x: at.x + od, y: at.y + od }, text: tag },
  ];
};

const gateLayer = (drawn: Primitive): DxfLayer =>
  'pen' in drawn && drawn.pen === 'swing' ? 'GATE-SWINGS' : 'GATES';

/**
 * A gate as the plan draws it, its name `clear` inches to the left of it; a gate that does not fit is not
 * built and not written.
 */
const gateThings = (
  layout: GateLayout,
  gate: Gate | undefined,
  site: Site,
  clear: number,
): DxfThing[] => {
  if (!layout.placed) return [];
  const at = moved(layout.middle, radians(layout.bearing + Math.PI / 2), clear);
  const label = gate?.label.trim() ?? '';
  const held = phrase`opening ${openingText(layout.opening.target, site.lengths)}`;
  return [
    ...drawGate(layout).flatMap((one) => drawnThings([one], gateLayer(one))),
    { kind: 'text', layer: 'GATES', at, text: `${label || phrase`Gate`}, ${held}` },
  ];
};

/** From a gate to its name on the side that its dimensions leave free, heights of a letter. */
const toName = 2;

/** Fence lines with their curves, then bays, posts, holes, gates and their swings from what the plan draws. */
export const fenceThings = (site: Site, layout: Layout, { letter }: DxfScale): DxfThing[] => {
  const { lines, posts, gates } = layout;
  const all = Object.values<LineLayout>(lines);
  const middle = yardMiddle(all, site);
  return [
    ...all.flatMap((line) => lineThings(line, site.lines[line.id]?.closed ?? false)),
    ...all.flatMap((line) => bayThings(line, site, layout)),
    ...[...posts.values()].flatMap(postThings),
    ...Object.values<GateLayout>(gates).flatMap((gate) => {
      const line = lines[gate.line];
      const side = line === undefined ? 1 : chainSide(line, middle);
      return gateThings(gate, site.gates[gate.id], site, -side * toName * letter);
    }),
  ];
};
