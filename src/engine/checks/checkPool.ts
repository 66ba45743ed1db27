import { centroid } from '../../geometry/centroid.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { SitePoint } from '../../geometry/point.ts';
import { isWoven } from '../../site/isWoven.ts';
import type { Feature } from '../../site/feature.ts';
import type { Infill } from '../../site/infill.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { Gate, Leaf } from '../../site/gate.ts';
import { infillWord } from '../../site/infillWord.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { defaultGapUnder } from '../../trade/gapUnder.ts';
import {
  poolGaps,
  poolGates,
  poolHeight,
  poolLatch,
  poolLatchBelowTop,
  poolLatchRoom,
  poolMeshes,
  poolRails,
  poolSlats,
  type PoolLimit,
} from '../../trade/poolBarriers.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { GateLayout, LineLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { closedBy } from '../structure/closedBy.ts';
import { fabricOf } from '../structure/fabricOf.ts';
import { plantedAt, saidOf, type GateFlag } from './gateFlag.ts';
import { gateName, lineName } from './names.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

type Say = (length: Inches) => string;

/** Limits of which some are passed: every one is named, since they disagree. */
const limitsText = (limits: readonly PoolLimit[], say: Say): string =>
  joined(
    limits.map(({ limit, source }) => phrase`${say(limit)} (${source.text})`),
    ', ',
  );

/** How far apart the rails of a build are, the nearest two, inches; null where there are not two. */
const railsApart = ({
  infill,
  topRail,
  middleRail,
  bottomRail,
  fabricHeight,
}: FenceSpec): Inches | null => {
  if (infill.kind === 'boards') {
    return infill.rails < 2 ? null : inches(fabricHeight / (infill.rails - 1));
  }
  if (infill.kind === 'panels') return null;
  const heights = [
    ...(bottomRail === null ? [] : [0]),
    ...(middleRail === null ? [] : [fabricHeight / 2]),
    ...(topRail === null ? [] : [fabricHeight]),
  ];
  const apart = heights.slice(1).map((height, n) => height - (heights[n] ?? 0));
  return apart.length === 0 ? null : inches(Math.min(...apart));
};

/** What boards leave open, and that panels do not say: nothing for fabric, whose mesh says it. */
const openFlags = (infill: Infill, name: string, say: Say): string[] => {
  const { limit, source } = poolSlats;
  const most = phrase`round a pool at most ${say(limit)} where rails can be climbed (${source.text})`;
  if (infill.kind === 'panels') {
    return [phrase`${name}: nobody has said how wide its panels are open: ${most}.`];
  }
  if (infill.kind !== 'boards' || infill.gap <= limit + slack) return [];
  return [phrase`${name} has ${say(infill.gap)} between boards: ${most}.`];
};

const lineFlags = (line: LineLayout, spec: FenceSpec, site: Site, say: Say): Flag[] => {
  const name = lineName(site, line.id);
  const plant = (rule: string, message: string): Flag => ({
    level: 'settle',
    rule,
    place: { kind: 'line', id: line.id },
    at: line.legs[0]?.start ?? { x: 0, y: 0 },
    message,
  });
  const fabric = fabricOf(spec);
  const { mesh } = fabric;
  const woven = closedBy(fabric, spec.solid).shape === 'flat';
  const taken = spec.mesh === null ? phrase`, taken since nobody has said` : '';
  const [strictGap] = poolGaps;
  const [strictMesh] = poolMeshes;
  const apart = railsApart(spec);
  return [
    ...(apart === null || apart >= poolRails.limit - slack
      ? []
      : [
          plant(
            'rails of a pool barrier',
            phrase`${name} has rails ${say(apart)} apart, that can be climbed: where they are nearer than ${say(poolRails.limit)} to each other they belong on the pool’s side (${poolRails.source.text}).`,
          ),
        ]),
    ...(spec.fabricHeight >= poolHeight.limit - slack
      ? []
      : [
          plant(
            'pool barrier low',
            phrase`${name} is ${say(spec.fabricHeight)} high: round a pool expected ${say(poolHeight.limit)} at least (${poolHeight.source.text}); many places ask for ${say(inches(60))}.`,
          ),
        ]),
    ...(strictGap === undefined || spec.gapUnder <= strictGap.limit + slack
      ? []
      : [
          plant(
            'gap under a pool barrier',
            phrase`${name} may have ${say(spec.gapUnder)} under its ${infillWord(spec.infill)}: round a pool at most ${limitsText(poolGaps, say)}.`,
          ),
        ]),
    ...openFlags(spec.infill, name, say).map((message) => plant('gaps of a pool barrier', message)),
    ...(!isWoven(spec) || strictMesh === undefined || mesh <= strictMesh.limit + slack || woven
      ? []
      : [
          plant(
            'mesh of a pool barrier',
            phrase`${name} has a mesh of ${say(mesh)}${taken}: round a pool at most ${limitsText(poolMeshes, say)}, unless slats leave no more than ${say(poolSlats.limit)}.`,
          ),
        ]),
  ];
};

/** The middles of the pools of a site. */
const poolsOf = ({ features, marks }: Site): SitePoint[] =>
  Object.values<Feature>(features).flatMap((feature) => {
    if (feature.kind !== 'pool') return [];
    const corners = verticesOf(feature.path).flatMap(({ mark }) => marks[mark] ?? []);
    return centroid(corners) ?? [];
  });

/** On which side of a gate, along its leg, the nearest pool lies; null where none is drawn. */
const poolSide = (
  { middle, bearing }: GateLayout,
  pools: readonly SitePoint[],
): Gate['opens'] | null => {
  const far = (at: SitePoint): number => Math.hypot(at.x - middle.x, at.y - middle.y);
  const [nearest] = pools.toSorted((a, b) => far(a) - far(b));
  if (nearest === undefined) return null;
  const [dx, dy] = [nearest.x - middle.x, nearest.y - middle.y];
  return Math.cos(bearing) * dy - Math.sin(bearing) * dx > 0 ? 'left' : 'right';
};

const latchFlags = (gate: Gate, spec: FenceSpec, say: Say): GateFlag[] => {
  const rule = 'latch of a pool gate';
  if (gate.latchHeight === null) {
    return [
      {
        level: 'settle',
        rule,
        message: phrase`nobody has said how high the latch of this pool gate is: ${say(poolLatch.limit)} over the bottom of the gate, or out of reach on the pool’s side (${poolLatch.source.text}).`,
      },
    ];
  }
  const bottom = gate.bottom ?? defaultGapUnder.length;
  const high = inches(gate.latchHeight - bottom);
  if (high >= poolLatch.limit - slack) return [];
  const top = say(inches(Math.max(0, spec.fabricHeight - poolLatchBelowTop)));
  return [
    {
      level: 'settle',
      rule,
      message: phrase`the latch is ${say(high)} over the bottom of this pool gate: lower than ${say(poolLatch.limit)} it belongs on the pool’s side, ${say(poolLatchBelowTop)} or more below the top (${top} up at most), with no opening over ${say(poolLatchRoom.opening)} within ${say(poolLatchRoom.within)} of it (${poolLatch.source.text}).`,
    },
  ];
};

/** The leaves of a gate in the barrier: how high they reach, and what they leave open below. */
const leafFlags = (gate: Gate, say: Say): GateFlag[] => {
  const { bottom } = gate;
  const under = bottom ?? defaultGapUnder.length;
  const tops = Object.values<Leaf>(gate.leaves).flatMap(({ height }) =>
    height === null ? [] : [under + height],
  );
  const top = inches(Math.min(...tops, Infinity));
  const [strict] = poolGaps;
  return [
    ...(top >= poolHeight.limit - slack
      ? []
      : [
          {
            level: 'settle' as const,
            rule: 'pool barrier low',
            message: phrase`this gate reaches ${say(top)} over the ground: round a pool expected ${say(poolHeight.limit)} at least (${poolHeight.source.text}); many places ask for ${say(inches(60))}.`,
          },
        ]),
    ...(bottom === null || strict === undefined || bottom <= strict.limit + slack
      ? []
      : [
          {
            level: 'settle' as const,
            rule: 'gap under a pool barrier',
            message: phrase`this gate hangs ${say(bottom)} over the ground: round a pool at most ${limitsText(poolGaps, say)}.`,
          },
        ]),
  ];
};

const gateFlags = (
  layout: GateLayout,
  site: Site,
  {
    spec,
    pools,
    say,
  }: { readonly spec: FenceSpec; readonly pools: readonly SitePoint[]; readonly say: Say },
): GateFlag[] => {
  const gate = site.gates[layout.id];
  if (gate === undefined) return [];
  const settle = (rule: string, message: string): GateFlag => ({ level: 'settle', rule, message });
  if (gate.way.kind === 'gap') {
    return [
      settle(
        'gap in a pool barrier',
        phrase`a gap in the barrier of a pool: expected a gate (${poolGates.text}).`,
      ),
    ];
  }
  const side = poolSide(layout, pools);
  const turns = layout.leaves.length > 0;
  return [
    ...(turns && side === null
      ? [
          settle(
            'pool not drawn',
            phrase`no pool is drawn: on which side it lies, and so which way this gate has to open, is not known.`,
          ),
        ]
      : []),
    ...(turns && side === gate.opens
      ? [
          {
            ...settle(
              'gate opens to the pool',
              phrase`this gate opens to the pool: expected away from it (${poolGates.text}).`,
            ),
            mend: {
              kind: 'open away' as const,
              gate: layout.id,
              opens: side === 'left' ? ('right' as const) : ('left' as const),
            },
          },
        ]
      : []),
    ...(gate.closer === null
      ? [
          settle(
            'pool gate without a closer',
            phrase`this gate does not close by itself: expected a closer (${poolGates.text}).`,
          ),
        ]
      : []),
    ...leafFlags(gate, say),
    ...latchFlags(gate, spec, say),
  ];
};

/**
 * What the barrier round a pool is compared with, each once and at its place: height, gap and mesh of the
 * fence, rails that can be climbed, height, gap, way, closer and latch of its gates. Where published limits disagree all
 * of them are named. What stands beside the fence and can be climbed is not looked at.
 */
export const checkPool = (site: Site, laid: LaidLines): Flag[] => {
  const say: Say = (length) => formatLength(length, fineStyle(site.lengths));
  const pools = poolsOf(site);
  return Object.values<LineLayout>(laid.lines).flatMap((line) => {
    const drawn = site.lines[line.id];
    const spec = drawn === undefined ? undefined : site.specs[drawn.spec];
    if (drawn?.guards !== 'pool' || spec === undefined) return [];
    const gates = Object.values<GateLayout>(laid.gates).filter((gate) => gate.line === line.id);
    return [
      ...lineFlags(line, spec, site, say),
      ...gates.flatMap((gate) =>
        plantedAt(
          gate,
          saidOf(gateName(site, gate.id), gateFlags(gate, site, { spec, pools, say })),
        ),
      ),
    ];
  });
};
