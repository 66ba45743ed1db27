import type { HardwareId } from './ids.ts';
import type { Site } from './site.ts';

/** The hinges, latches and closers that gates are built with. */
export const partsInUse = ({ gates }: Pick<Site, 'gates'>): Set<HardwareId> =>
  new Set(
    Object.values(gates)
      .flatMap(({ latch, closer, leaves }) => [
        latch,
        closer,
        ...Object.values(leaves).map(({ hinge }) => hinge),
      ])
      .filter((part) => part !== null),
  );
