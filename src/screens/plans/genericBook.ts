import type { Parts } from '../../site/parts.ts';
import { assumedHardware } from '../../trade/hardware.ts';
import { assumedPart } from './assumedPart.ts';

/** The hardware book as it is before a company has written in it: generic sizes, all assumed. */
export const genericBook: Parts = Object.fromEntries(
  assumedHardware.map(assumedPart).map(({ id, hardware }) => [id, hardware]),
);
