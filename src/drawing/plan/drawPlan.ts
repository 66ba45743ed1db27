import type { Bundle, Group } from '../group.ts';
import { newCarry, type Carry } from '../../engine/carry/carry.ts';
import type { Layout } from '../../engine/layout.ts';
import type { Feature } from '../../site/feature.ts';
import type { Site } from '../../site/site.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { DrawnLayer } from '../drawOnPaper.ts';
import type { LayerName } from '../layerNames.ts';
import type { Primitive } from '../primitive.ts';
import { drawFeature } from './drawFeature.ts';
import { drawFlags } from './drawFlags.ts';
import { drawGate, gateLabel } from './drawGate.ts';
import { drawGround } from './drawGround.ts';
import { fenceGroups, type FenceGroups } from './fenceGroups.ts';
import { drawRoomsOf } from './drawLeafRooms.ts';
import { drawLoneMarks } from './drawLoneMarks.ts';
import { drawWallTops } from './drawWallTops.ts';
import { drawClearGround, drawHeld } from './drawPins.ts';
import { kept } from './kept.ts';
import { standing } from './standing.ts';

/** What a plan shows, one concern each. */
export type PlanPart =
  | ('ground' | 'features' | 'fence' | 'posts' | 'pins' | 'gates' | 'leaf rooms' | 'marks')
  | ('gate labels' | 'tags' | 'chains' | 'flags');

export interface PlanOptions {
  /** Parts to leave away. */
  readonly omit?: readonly PlanPart[];
  /** How lengths are written; the site's own way unless said. */
  readonly lengths?: LengthStyle;
  /** Where the tapes of all runs are printed, chains without room for their pieces say so. */
  readonly tapes?: 'printed';
}

/** What lies lower is drawn first; names of things that lie on top are lettered first. */
const featureOrder: readonly Feature['kind'][] = [
  ...(['paving', 'pool', 'height zone', 'building', 'keep-out'] as const),
  ...(['boundary', 'utility', 'tree', 'note'] as const),
];

const values = <T>(map: Readonly<Record<string, T>>): T[] => Object.values(map);

const drawFeatures = (site: Site): Primitive[] =>
  featureOrder.flatMap((kind) =>
    values(site.features)
      .filter((feature) => feature.kind === kind)
      .flatMap((feature) => drawFeature(feature, site)),
  );

/** The layer that each part is on. */
const layerOf: Readonly<Record<PlanPart, LayerName>> = {
  ground: 'yard',
  features: 'yard',
  fence: 'fence',
  gates: 'fence',
  posts: 'fence',
  pins: 'fence',
  'leaf rooms': 'fence',
  marks: 'yard',
  tags: 'names',
  'gate labels': 'names',
  chains: 'dimensions',
  flags: 'flags',
};

/** What one part of a plan shows, in the order in which it is drawn. */
export interface PlanGroups {
  readonly part: PlanPart;
  readonly bundles: readonly Bundle[];
}

const featureGroups = (site: Site, layout: Layout, carry: Carry): Group[] => {
  const things = carry.shelf<Group>('features');
  const from = [site.features, site.marks, site.lengths];
  return [
    things.take('features', from, () => drawFeatures(site)),
    things.settle('wall tops', drawWallTops(site, layout)),
    things.settle('clear ground', drawClearGround(site, layout)),
  ];
};

const leafRoomGroups = (site: Site, layout: Layout, carry: Carry): Group[] => {
  const { ground } = layout;
  if (ground === null) return [];
  const rooms = carry.shelf<Group>('leaf rooms');
  return values(layout.gates).map((laid) => {
    const gate = site.gates[laid.id];
    const from = [gate, laid, ground, site.lengths];
    return rooms.take(laid.id, from, () =>
      gate === undefined ? [] : drawRoomsOf(gate, laid, { ground, style: site.lengths }),
    );
  });
};

/**
 * The plan of a site in groups, part by part from the ground up: grade shots and contours, what is in the yard,
 * fence, posts, gates, then names, chains and flags. Whatever part of the layout is missing is not drawn. What is
 * drawn of the same as in the plan before (`carry`) is the very same group.
 */
export const planGroups = (
  site: Site,
  layout: Layout,
  { omit = [], lengths = site.lengths, tapes }: PlanOptions,
  carry: Carry,
): readonly PlanGroups[] => {
  const gates = values(layout.gates);
  let drawn: FenceGroups | null = null;
  const fences = () => (drawn ??= fenceGroups(site, layout, { lengths, tapes }, carry));
  const things = carry.shelf<Group>('plan');
  const parts: Readonly<Record<PlanPart, () => readonly Bundle[]>> = {
    ground: () => [
      [things.take('ground', [layout.ground, lengths], () => drawGround(layout.ground, lengths))],
    ],
    features: () => [featureGroups(site, layout, carry)],
    fence: () => fences().fence,
    gates: () => {
      const leaves = carry.shelf<Group>('gates');
      return [gates.map((gate) => leaves.take(gate.id, [gate], () => drawGate(gate)))];
    },
    posts: () => fences().posts,
    pins: () => [[things.settle('pins', values(site.pins).length === 0 ? [] : drawHeld(layout))]],
    'leaf rooms': () => [leafRoomGroups(site, layout, carry)],
    marks: () => [
      [things.next('marks', standing(site), (before) => kept(before, drawLoneMarks(site)))],
    ],
    tags: () => fences().tags,
    'gate labels': () => {
      const labels = carry.shelf<Group>('gate labels');
      const labelled = gates.map((gate) => {
        const said = site.gates[gate.id];
        const label = () => [gateLabel(gate, said, lengths)];
        return labels.take(gate.id, [gate, said, lengths], label);
      });
      return [labelled];
    },
    chains: () => fences().chains,
    flags: () => [[things.settle('flags', drawFlags(layout.flags))]],
  };
  return (Object.keys(parts) as PlanPart[])
    .filter((part) => !omit.includes(part))
    .map((part) => ({ part, bundles: parts[part]() }));
};

/** The plan of a site in layers: see `planGroups`. */
export const planLayers = (
  site: Site,
  layout: Layout,
  options: PlanOptions = {},
): readonly DrawnLayer[] =>
  planGroups(site, layout, options, newCarry()).map(({ part, bundles }) => ({
    name: layerOf[part],
    primitives: bundles.flat(2),
  }));

/** The plan of a site as primitives without layers: see `planGroups`. */
export const drawPlan = (
  site: Site,
  layout: Layout,
  options: PlanOptions = {},
): readonly Primitive[] =>
  planLayers(site, layout, options).flatMap(({ primitives }) => primitives);
