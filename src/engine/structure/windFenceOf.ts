import type { FenceSpec } from '../../site/fenceSpec.ts';
import { barbedStrand } from '../../trade/barbedWire.ts';
import { closedBy } from './closedBy.ts';
import { fabricOf } from './fabricOf.ts';
import type { WindFence, WindRail } from './fenceWind.ts';

const rails = [
  ['top rail', 'topRail'],
  ['middle rail', 'middleRail'],
  ['bottom rail', 'bottomRail'],
] as const;

/** A build as wind meets it, but for its posts: the usual fabric where nobody has said. Lengths in inches. */
export const windFenceOf = (spec: FenceSpec): Omit<WindFence, 'post'> => {
  const fabric = fabricOf(spec);
  const { barbedWire } = spec;
  return {
    ...closedBy(fabric, spec.solid),
    ...fabric,
    fabricHeight: spec.fabricHeight,
    gapUnder: spec.gapUnder,
    rails: rails.flatMap(([part, own]): WindRail[] => {
      const rail = spec[own];
      return rail === null ? [] : [{ part, od: rail.od }];
    }),
    barbedWire: barbedWire && { strands: barbedWire.strands, across: barbedStrand.across },
  };
};
