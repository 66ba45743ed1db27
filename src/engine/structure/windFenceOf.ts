import type { FenceSpec } from '../../site/fenceSpec.ts';
import { railsOf } from '../../site/railsOf.ts';
import { barbedStrand } from '../../trade/barbedWire.ts';
import { closedBy, type Closed } from './closedBy.ts';
import { fabricOf } from './fabricOf.ts';
import type { WindFence } from './fenceWind.ts';

/** How solid what hangs between the posts is: panels of which nobody has said are taken to be all solid. */
const closedOf = (spec: FenceSpec): Closed => {
  const { infill, solid } = spec;
  switch (infill.kind) {
    case 'chain link':
      return closedBy(fabricOf(spec), solid);
    case 'boards':
      return { solidity: infill.width / (infill.width + infill.gap), shape: 'flat' };
    case 'panels':
      return { solidity: solid ?? 1, shape: 'flat' };
  }
};

/**
 * A build as wind meets it, but for its posts: the usual fabric where nobody has said, whose mesh stands
 * for what ice closes in boards and panels too. Lengths in inches.
 */
export const windFenceOf = (spec: FenceSpec): Omit<WindFence, 'post'> => {
  const { barbedWire } = spec;
  return {
    ...closedOf(spec),
    ...fabricOf(spec),
    fabricHeight: spec.fabricHeight,
    gapUnder: spec.gapUnder,
    rails: railsOf(spec).map(({ part, pipe }) => ({ part, od: pipe.od })),
    barbedWire: barbedWire && { strands: barbedWire.strands, across: barbedStrand.across },
  };
};
