import { checked } from '../site/checked.ts';
import { hardwareSchema, partVersion, type Hardware } from '../site/hardware.ts';
import { hardwareId, type HardwareId } from '../site/ids.ts';
import { limits } from '../site/limits.ts';
import type { BookKind } from './bookKind.ts';
import { phrase } from '../phrases/phrase.ts';

/** The company's hinges, latches, drop rods and closers. */
export const hardwareKind: BookKind<HardwareId, Hardware> = {
  called: phrase`hardware book`,
  most: limits.hardware,
  checkedId: (id) => checked(hardwareId, id, ['book']) as HardwareId,
  checkedEntry: (part, where) => checked(hardwareSchema, part, where),
  field: 'part',
  version: partVersion,
};
