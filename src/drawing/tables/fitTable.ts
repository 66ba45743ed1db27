import type { FitRow } from '../../engine/checks/fitsOf.ts';
import { madeForText } from '../../engine/checks/misfitText.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../../units/pipeSize.ts';
import type { Column, Table } from './table.ts';
import { phrase } from '../../phrases/phrase.ts';

const columns: readonly Column[] = [
  { heading: phrase`Part`, align: 'left', share: 2 },
  { heading: phrase`Against`, align: 'left', share: 2 },
  { heading: phrase`OD here`, align: 'right', share: 1 },
  { heading: phrase`Made for`, align: 'left', share: 2 },
  { heading: phrase`Fit`, align: 'left', share: 2 },
];

const things: Readonly<Record<FitRow['role'] | FitRow['against'], string>> = {
  hinge: phrase`hinge`,
  latch: phrase`latch`,
  closer: phrase`closer`,
  post: phrase`post`,
  frame: phrase`frame`,
};

const names: Readonly<Record<FitRow['role'], string>> = {
  hinge: phrase`Hinge`,
  latch: phrase`Latch`,
  closer: phrase`Closer`,
};

/** Whether a part fits, in words; where that is not known, what is to be measured for it. */
const fitVerdict = ({ fits, od, against, low, role }: FitRow): string => {
  if (fits !== null) return fits ? phrase`fits` : phrase`does not fit`;
  const unknown = [
    ...(od === null ? [things[against]] : []),
    ...(low === null ? [things[role]] : []),
  ];
  const [one = '', other] = unknown;
  return other === undefined
    ? phrase`not known: measure the ${one}`
    : phrase`not known: measure the ${one} and the ${other}`;
};

/**
 * Every hinge, latch and closer of a gate against what it is fixed to, with outside diameters;
 * `name` is the gate's. A gate without parts has no rows.
 */
export const fitTable = (rows: readonly FitRow[], name: string, style: LengthStyle): Table => ({
  title: phrase`Hardware fit, ${name}`,
  columns,
  rows: rows.map((row) => [
    `${names[row.role]}: ${row.label}`,
    row.on,
    row.od === null ? phrase`not said` : pipeSize(row.od, style),
    madeForText(row, style) ?? phrase`not said`,
    fitVerdict(row),
  ]),
});
