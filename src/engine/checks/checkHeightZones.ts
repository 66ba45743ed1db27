import type { SitePoint } from '../../geometry/point.ts';
import { slack } from '../../geometry/tolerance.ts';
import type { Feature } from '../../site/feature.ts';
import type { FenceSpec } from '../../site/fenceSpec.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import { infillWord } from '../../site/infillWord.ts';
import type { Site } from '../../site/site.ts';
import { barbedArms } from '../../trade/barbedWire.ts';
import { heightZoneLimits } from '../../trade/heightZoneLimits.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { LineLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { heightLimitOf } from './heightLimitOf.ts';
import { lineName, oneLine } from './names.ts';
import { zonedFence, type ZonedPiece } from './zonedFence.ts';
import { joined, phrase } from '../../phrases/phrase.ts';

type HeightZone = Extract<Feature, { kind: 'height zone' }>;

interface Zone {
  readonly name: string;
  readonly feature: HeightZone;
  readonly ring: readonly SitePoint[];
}

const groundWords: Readonly<Record<HeightZone['of'], string>> = {
  'sight triangle': phrase`the sight triangle`,
  'front yard': phrase`the front yard`,
};

const zonesOf = (site: Site): Zone[] =>
  Object.values<Feature>(site.features).flatMap((feature) => {
    if (feature.kind !== 'height zone') return [];
    const ring = verticesOf(feature.path).flatMap(({ mark }) => site.marks[mark] ?? []);
    const label = oneLine(feature.label);
    const name =
      label === '' ? groundWords[feature.of] : phrase`${groundWords[feature.of]} “${label}”`;
    return [{ name, feature, ring }];
  });

const sourceOf = ({ of, ...limits }: HeightZone, which: 'solid' | 'open'): string => {
  const known = heightZoneLimits[of].find((one) => one[which] === limits[which]);
  return known === undefined
    ? phrase`as it was typed for this ground; the local code decides`
    : phrase`${known.source.text}; the local code decides`;
};

interface Found {
  readonly zone: Zone;
  readonly spec: FenceSpec;
  readonly pieces: readonly ZonedPiece[];
}

/** The highest of a build that counts, over the ground under it or under its wall, inches. */
const overGround = ({ fabricHeight, gapUnder, barbedWire }: FenceSpec, wall: number): number =>
  wall + gapUnder + fabricHeight + (barbedWire === null ? 0 : barbedArms.reach);

const messageOf = (line: string, { zone, spec, pieces }: Found, site: Site): string => {
  const write = (length: number) => formatLength(inches(length), fineStyle(site.lengths));
  const { which, limit } = heightLimitOf(zone.feature, spec);
  const wall = Math.max(...pieces.map((piece) => piece.wall));
  const top = overGround(spec, wall);
  const parts = [
    phrase`${infillWord(spec.infill)} ${write(spec.fabricHeight)}`,
    ...(spec.gapUnder > 0 ? [phrase`${write(spec.gapUnder)} under it`] : []),
    ...(wall > 0 ? [phrase`a wall of ${write(wall)}`] : []),
    ...(spec.barbedWire === null ? [] : [phrase`barbed wire ${write(barbedArms.reach)} over it`]),
  ];
  const inside = pieces.reduce((sum, { length }) => sum + length, 0);
  const kind = which === 'solid' ? phrase`fence that one cannot see through` : phrase`open fence`;
  return phrase`${line} passes through ${zone.name} for ${write(inside)}, up to ${write(top)} over the ground (${joined(parts, ', ')}; tops of posts are not compared): expected ${kind} no higher than ${write(limit)} there (${sourceOf(zone.feature, which)}).`;
};

/**
 * Fence that is higher than a sight triangle or a front yard lets it be where it passes through: a settle,
 * once for a line and such ground, where it first goes in. The top of the fabric is compared, with the
 * gap under it, the wall that it stands on and barbed wire over it. Buildings are not looked at.
 */
export const checkHeightZones = (site: Site, laid: LaidLines): Flag[] => {
  const zones = zonesOf(site);
  if (zones.length === 0) return [];
  return Object.values<LineLayout>(laid.lines).flatMap((line) => {
    const spec = site.specs[site.lines[line.id]?.spec ?? 'spec:'];
    if (spec === undefined) return [];
    return zones.flatMap((zone): Flag[] => {
      const { limit } = heightLimitOf(zone.feature, spec);
      const pieces = zonedFence(line, zone.ring, site, laid).filter(
        (piece) => overGround(spec, piece.wall) > limit + slack,
      );
      const [first] = pieces;
      if (first === undefined) return [];
      const message = messageOf(lineName(site, line.id), { zone, spec, pieces }, site);
      const place = { kind: 'line', id: line.id } as const;
      return [
        { level: 'settle', rule: 'fence over a height limit', place, at: first.start, message },
      ];
    });
  });
};
