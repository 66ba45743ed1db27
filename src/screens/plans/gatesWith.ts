import type { HardwareId } from '../../site/ids.ts';
import { partsInUse } from '../../site/partsInUse.ts';
import type { Site } from '../../site/site.ts';

/** How many gates of a site have a part as hinge, latch or closer. */
export const gatesWith = ({ gates }: Pick<Site, 'gates'>, part: HardwareId): number =>
  Object.values(gates).filter((gate) => partsInUse({ gates: { 'gate:own': gate } }).has(part))
    .length;
