import type { Inches } from '../../units/inches.ts';
import type { Site } from '../../site/site.ts';
import type { Flag } from '../flag.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { fitsOf, type FitRow } from './fitsOf.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { gateName, oneLine } from './names.ts';
import { odText } from './odText.ts';

const misfitFlag = (name: string, row: FitRow, site: Site): GateFlag[] => {
  const { role, label, against, on, od, low, high, fits } = row;
  if (fits !== false || od === null || low === null || high === null) return [];
  const write = (length: Inches): string => odText(length, site.lengths);
  const range = low === high ? write(low) : `${write(low)} to ${write(high)}`;
  const message = `${name}: ${role} “${oneLine(label)}” fits ${against}s of ${range} OD: ${on} is ${write(od)}; take another ${role} or another ${against}.`;
  return [{ level: 'settle', rule: 'part does not fit', message }];
};

/** A part that is made for other posts or frames than it would be fixed to, one flag for each. */
export const checkFits = (site: Site, laid: LaidLines): Flag[] =>
  Object.values(laid.gates).flatMap((gate) =>
    plantedAt(
      gate,
      fitsOf(site, laid, gate).flatMap((row) => misfitFlag(gateName(site, gate.id), row, site)),
    ),
  );
