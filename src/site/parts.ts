import type { Hardware } from './hardware.ts';
import type { HardwareId } from './ids.ts';

/** Hinges, latches, drop rods and closers by their ids, as a site or a hardware book carries them. */
export type Parts = Readonly<Record<HardwareId, Hardware>>;
