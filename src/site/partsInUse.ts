import type { HardwareId } from './ids.ts';
import type { Site } from './site.ts';

/** The hinges and latches that gates are built with. */
export const partsInUse = ({ gates }: Pick<Site, 'gates'>): Set<HardwareId> =>
  new Set(
    Object.values(gates).flatMap(({ latch, leaves }) => [
      latch,
      ...Object.values(leaves).map(({ hinge }) => hinge),
    ]),
  );
