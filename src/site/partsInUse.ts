import type { HardwareId } from './ids.ts';
import type { Site } from './site.ts';

/** The hinges and latches that gates are built with. */
export const partsInUse = (site: Site): Set<HardwareId> =>
  new Set(
    Object.values(site.gates).flatMap(({ latch, leaves }) => [
      latch,
      ...Object.values(leaves).map(({ hinge }) => hinge),
    ]),
  );
