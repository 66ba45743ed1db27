import type { FitRow } from '../../engine/checks/fitsOf.ts';
import { madeForText } from '../../engine/checks/misfitText.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import type { Column, Table } from './table.ts';

const columns: readonly Column[] = [
  { heading: 'Part', align: 'left', share: 2 },
  { heading: 'Against', align: 'left', share: 2 },
  { heading: 'OD here', align: 'right', share: 1 },
  { heading: 'Made for', align: 'left', share: 2 },
  { heading: 'Fit', align: 'left', share: 2 },
];

const names: Readonly<Record<FitRow['role'], string>> = {
  hinge: 'Hinge',
  latch: 'Latch',
  closer: 'Closer',
};

/** Whether a part fits, in words; where that is not known, what is to be measured for it. */
export const fitVerdict = ({ fits, od, against, low, role }: FitRow): string => {
  if (fits !== null) return fits ? 'fits' : 'does not fit';
  const unknown = [...(od === null ? [against] : []), ...(low === null ? [role] : [])];
  return `not known: measure the ${unknown.join(' and the ')}`;
};

/**
 * Every hinge, latch and closer of a gate against what it is fixed to, with outside diameters;
 * `name` is the gate's. A gate without parts has no rows.
 */
export const fitTable = (rows: readonly FitRow[], name: string, style: LengthStyle): Table => ({
  title: `Hardware fit, ${name}`,
  columns,
  rows: rows.map((row) => [
    `${names[row.role]}: ${row.label}`,
    row.on,
    row.od === null ? 'not said' : pipeSize(row.od, style),
    madeForText(row, style) ?? 'not said',
    fitVerdict(row),
  ]),
});
