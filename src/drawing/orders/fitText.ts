import { fitsOf, type FitRow } from '../../engine/checks/fitsOf.ts';
import { madeForText } from '../../engine/checks/misfitText.ts';
import type { Layout } from '../../engine/layout.ts';
import type { GateId, HardwareId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import { phrase } from '../../phrases/phrase.ts';

/** A part in a gate, by what it does there. */
export interface PartInGate {
  readonly gate: GateId;
  readonly role: FitRow['role'];
  readonly part: HardwareId;
}

const misfit = (row: FitRow, style: LengthStyle): string => {
  const od = row.od === null ? '' : pipeSize(row.od, style);
  return phrase`${row.on} is ${od}, made for ${madeForText(row, style) ?? ''}`;
};

/** Whether a part fits what it is fixed to in a gate, as an order says it; nothing where it is not there. */
export const fitText = (
  site: Site,
  layout: Pick<Layout, 'posts' | 'gates'>,
  { gate, role, part }: PartInGate,
): string => {
  const laid = layout.gates[gate];
  const all = laid === undefined ? [] : fitsOf(site, layout, laid);
  const rows = all.filter((row) => row.role === role && row.part === part);
  const wrong = rows.filter(({ fits }) => fits === false).map((row) => misfit(row, site.lengths));
  if (rows.length === 0) return '';
  if (wrong.length > 0) return phrase`DOES NOT FIT: ${wrong.join('; ')}`;
  return rows.every(({ fits }) => fits === true) ? phrase`yes` : phrase`not known: measure`;
};
