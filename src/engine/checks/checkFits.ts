import type { Site } from '../../site/site.ts';
import type { Flag } from '../flag.ts';
import type { LaidLines } from '../posts/layLines.ts';
import { fitsOf, type FitRow } from './fitsOf.ts';
import { plantedAt, type GateFlag } from './gateFlag.ts';
import { misfitText } from './misfitText.ts';
import { gateName } from './names.ts';
import { phrase } from '../../phrases/phrase.ts';

const otherPart: Readonly<Record<FitRow['role'], string>> = {
  hinge: phrase`another hinge`,
  latch: phrase`another latch`,
  closer: phrase`another closer`,
};

const otherMount: Readonly<Record<FitRow['against'], string>> = {
  post: phrase`another post`,
  frame: phrase`another frame`,
};

const misfitFlag = (name: string, row: FitRow, site: Site): GateFlag[] => {
  const says = misfitText(row, site.lengths);
  if (says === null) return [];
  const message = phrase`${name}: ${says}; take ${otherPart[row.role]} or ${otherMount[row.against]}.`;
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
