import type { FenceSpec } from '../../site/fenceSpec.ts';
import type { SpecId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import { formatLength } from '../../units/formatLength.ts';
import { sum, type Inches } from '../../units/inches.ts';
import type { Carry } from '../carry/carry.ts';
import type { LineLayout } from '../layout.ts';
import type { LoadLine } from '../loadLine.ts';

/** Fence of one line between its posts, inches: openings are never counted. */
const fenced = ({ runs }: LineLayout): Inches =>
  sum(
    runs.flatMap(({ spaces }) =>
      spaces.flatMap((space) => (space.kind === 'bay' ? [space.length] : [])),
    ),
  );

const loadLines = (
  spec: FenceSpec,
  lines: readonly LineLayout[],
  site: Site,
  carry: Carry,
): LoadLine[] => {
  const lengths = carry.shelf<Inches>('fenced length');
  const count = sum(lines.map((line) => lengths.take(line.id, line.runs, () => fenced(line))));
  if (count === 0) return [];
  const of = { posts: [], lines: lines.map(({ id }) => id), gates: [] };
  const height = formatLength(spec.fabricHeight, site.lengths);
  const fabric: LoadLine = {
    item: `Fabric ${height} high, ${spec.label}`,
    count,
    unit: 'length',
    each: null,
    rule: 'Bays added up, centre to centre; openings are not counted.',
    source: 'ASTM F567-07 4.1; Caltrans Standard Specifications 80-1.04',
    of,
  };
  if (spec.topRail === null) return [fabric];
  const rail: LoadLine = {
    ...fabric,
    item: `Top rail, ${spec.topRail.label}`,
    rule: 'As long as the fabric.',
    source: 'company rule',
  };
  return [fabric, rail];
};

/** Fabric and top rail, a line for each fence spec in the order of their ids. */
export const countFabric = (lines: readonly LineLayout[], site: Site, carry: Carry): LoadLine[] => {
  const bySpec = new Map<SpecId, LineLayout[]>();
  for (const line of lines) {
    const spec = site.lines[line.id]?.spec;
    if (spec !== undefined) bySpec.set(spec, [...(bySpec.get(spec) ?? []), line]);
  }
  return [...bySpec]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([id, same]) => {
      const spec = site.specs[id];
      return spec === undefined ? [] : loadLines(spec, same, site, carry);
    });
};
