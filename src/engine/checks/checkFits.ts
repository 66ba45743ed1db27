import type { Site } from '../../site/site.ts';
import type { Carry } from '../carry/carry.ts';
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
export const checkFits = (site: Site, laid: LaidLines, carry: Carry): Flag[] => {
  const known = carry.shelf<readonly FitRow[]>('what parts are fixed to');
  return Object.values(laid.gates).flatMap((gate) => {
    const posts = [gate.posts?.start, gate.posts?.end].map((id) => laid.posts.get(id ?? 'post:'));
    const from = [gate, site.gates[gate.id], site.hardware, ...posts];
    const rows = known.take(gate.id, from, () =>
      fitsOf(site, laid, gate).filter(({ fits }) => fits === false),
    );
    return plantedAt(
      gate,
      rows.flatMap((row) => misfitFlag(gateName(site, gate.id), row, site)),
    );
  });
};
