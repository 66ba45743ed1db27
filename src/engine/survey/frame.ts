import { eliminationOrder } from '../../geometry/eliminationOrder.ts';
import { triangleFill, type TriangleFill } from '../../geometry/triangleFill.ts';
import type { MarkId } from '../../site/ids.ts';
import { marksObserved } from '../../site/marksObserved.ts';
import type { Carry } from '../carry/carry.ts';
import type { Network } from './networks.ts';

/** Where the unknowns of the marks of a network stand in its equations, and what these fill. */
export interface Frame {
  /** For each mark that can move the column of its x; that of its y is the next. */
  readonly columns: ReadonlyMap<MarkId, number>;
  /** How many columns there are. */
  readonly size: number;
  /** What the triangle of its equations may fill. */
  readonly fill: TriangleFill;
}

/** The columns of the marks of a network, in an order that keeps its equations sparse. */
export const frameOf = ({ spots, sightings }: Network): Frame => {
  const marks = [...spots].filter(([, { fixed }]) => !fixed).map(([id]) => id);
  const numbers = new Map(marks.map((id, n) => [id, n] as const));
  const groups = sightings.map(({ seen }) =>
    Object.values(marksObserved(seen)).flatMap((id) => numbers.get(id) ?? []),
  );
  const { places, later } = eliminationOrder(marks.length, groups);
  return {
    columns: new Map(marks.map((id, n) => [id, 2 * places[n]!] as const)),
    size: 2 * marks.length,
    fill: triangleFill(later, 2),
  };
};

/** The frame of a network; that of before where the same marks stand in the same observations, whatever these read. */
export const frameFrom = (network: Network, carry: Carry): Frame => {
  const from: unknown[] = [];
  for (const [id, { fixed }] of network.spots) from.push(id, fixed);
  for (const { seen } of network.sightings)
    from.push(...Object.values(marksObserved(seen)), seen.kind);
  return carry
    .shelf<Frame>('frame')
    .take(network.sightings[0]?.id ?? '', from, () => frameOf(network));
};
