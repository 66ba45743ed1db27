import { nearestOfSegments, type NearestPlace } from '../../geometry/nearestOfSegments.ts';
import type { Segment } from '../../geometry/segment.ts';
import type { Feature } from '../../site/feature.ts';
import type { FeatureId } from '../../site/ids.ts';
import { verticesOf } from '../../site/pathOrder.ts';
import type { Site } from '../../site/site.ts';
import { fenceGrounding, overheadClearance } from '../../trade/overheadLines.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { Flag } from '../flag.ts';
import type { LineLayout } from '../layout.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { lineName, oneLine } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

interface Wires {
  readonly name: string;
  readonly electric: boolean;
  readonly pieces: readonly Segment<'site'>[];
  /** Half of their width, inches. */
  readonly half: number;
}

const overheadWords: Readonly<Record<Extract<Feature, { kind: 'utility' }>['service'], string>> = {
  electric: phrase`the electric line overhead`,
  gas: phrase`the gas line overhead`,
  communication: phrase`the communication line overhead`,
  water: phrase`the water line overhead`,
  reclaimed: phrase`the reclaimed line overhead`,
  sewer: phrase`the sewer line overhead`,
};

const wiresOf = (site: Site): Wires[] =>
  (Object.entries(site.features) as [FeatureId, Feature][]).flatMap(([, feature]) => {
    if (feature.kind !== 'utility' || feature.run !== 'overhead') return [];
    const points = verticesOf(feature.path).flatMap(({ mark }) => site.marks[mark] ?? []);
    const pieces = points.slice(1).map((end, n) => ({ start: points[n] ?? end, end }));
    const name = oneLine(feature.label) || overheadWords[feature.service];
    const electric = feature.service === 'electric';
    return [{ name, electric, pieces, half: feature.width / 2 }];
  });

type Near = NearestPlace<'site'>;

/** The fence of a line from post to post, gates too. */
const piecesOf = ({ runs }: LineLayout, { posts }: LaidLines): Segment<'site'>[] =>
  runs.flatMap((run) => {
    const places = run.posts.flatMap(({ post }) => posts.get(post)?.at ?? []);
    return places.slice(1).map((end, n) => ({ start: places[n] ?? end, end }));
  });

const nearestOf = (fence: readonly Segment<'site'>[], { pieces, half }: Wires): Near | null => {
  let nearest: Near | null = null;
  for (const piece of fence) {
    for (const wire of pieces) {
      const found = nearestOfSegments(piece, wire);
      if (nearest === null || found.distance < nearest.distance) nearest = found;
    }
  }
  return nearest && { ...nearest, distance: Math.max(0, nearest.distance - half) };
};

const messageOf = (
  { name, electric }: Wires,
  {
    line,
    far,
    away,
    grounded,
  }: {
    readonly line: string;
    readonly far: string | null;
    readonly away: string;
    readonly grounded: string;
  },
): string => {
  const where =
    far === null ? phrase`${line} passes under ${name}` : phrase`${line} is ${far} from ${name}`;
  if (!electric) {
    return phrase`${where}: keep long pipe, rolls and machines clear of it, and ask its owner before anything touches it.`;
  }
  const ground =
    far === null
      ? phrase` Such fence is grounded ${grounded} from there and at each side of every gate (${fenceGrounding.source.text}).`
      : '';
  return phrase`${where}: keep long pipe, rolls and machines ${away} away or as its owner asks (${overheadClearance.source.text}).${ground}`;
};

/** Fence under services overhead, or as near to them in plan as work has to stay away: a caution each. */
export const checkOverhead = (site: Site, laid: LaidLines): Flag[] => {
  const all = wiresOf(site);
  if (all.length === 0) return [];
  return Object.values<LineLayout>(laid.lines).flatMap((line) => {
    const fence = piecesOf(line, laid);
    return all.flatMap((wires): Flag[] => {
      const near = nearestOf(fence, wires);
      if (near === null || near.distance > overheadClearance.length) return [];
      const far =
        near.distance === 0 ? null : formatLength(inches(near.distance), fineStyle(site.lengths));
      const away = formatLength(overheadClearance.length, site.lengths);
      const grounded = formatLength(fenceGrounding.length, site.lengths);
      const message = messageOf(wires, { line: lineName(site, line.id), far, away, grounded });
      const place = { kind: 'line', id: line.id } as const;
      return [{ level: 'caution', rule: 'line overhead', place, at: near.at, message }];
    });
  });
};
