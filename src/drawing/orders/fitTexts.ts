import { fitsOf, type FitRow } from '../../engine/checks/fitsOf.ts';
import { madeForText } from '../../engine/checks/misfitText.ts';
import type { Layout } from '../../engine/layout.ts';
import type { GateId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { pipeSize } from '../tables/pipeSize.ts';

const misfit = (row: FitRow, style: LengthStyle): string => {
  const od = row.od === null ? '' : pipeSize(row.od, style);
  return `${row.on} is ${od}, made for ${madeForText(row, style) ?? ''}`;
};

const told = (rows: readonly FitRow[], style: LengthStyle): string => {
  const wrong = rows.filter(({ fits }) => fits === false).map((row) => misfit(row, style));
  if (wrong.length > 0) return `DOES NOT FIT: ${[...new Set(wrong)].join('; ')}`;
  return rows.every(({ fits }) => fits === true) ? 'yes' : 'not known: measure';
};

/**
 * Whether the parts of a gate fit its posts and frames, as an order says it of each role; nothing
 * of a role that it has not.
 */
export const fitTexts = (
  site: Site,
  layout: Pick<Layout, 'posts' | 'gates'>,
  id: GateId,
): Readonly<Partial<Record<FitRow['role'], string>>> => {
  const laid = layout.gates[id];
  const rows = laid === undefined ? [] : fitsOf(site, layout, laid);
  const roles = [...new Set(rows.map(({ role }) => role))];
  return Object.fromEntries(
    roles.map((role) => [
      role,
      told(
        rows.filter((row) => row.role === role),
        site.lengths,
      ),
    ]),
  );
};
