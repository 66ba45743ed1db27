import { fitTable } from '../../drawing/tables/fitTable.ts';
import { fitsOf, type FitRow } from '../../engine/checks/fitsOf.ts';
import type { GateLayout } from '../../engine/layout.ts';
import { useLayout, useSite } from '../bench.ts';
import { TableView } from '../TableView.tsx';
import { phrase } from '../../phrases/phrase.ts';

interface Props {
  readonly gate: GateLayout;
  /** Of the gate. */
  readonly name: string;
}

/** How the parts of a gate fit, in a few words. */
const fitSummary = (rows: readonly FitRow[]): string => {
  const count = (fits: boolean | null): number => rows.filter((row) => row.fits === fits).length;
  const [wrong, unknown] = [count(false), count(null)];
  if (wrong > 0) return phrase`does not fit at ${wrong} of ${rows.length} places`;
  if (unknown > 0) return phrase`not known at ${unknown} of ${rows.length} places`;
  return phrase`fits`;
};

/** Every hinge, latch and closer against what it is fixed to; unfolded while one does not fit. */
export const FitList = ({ gate, name }: Props) => {
  const site = useSite();
  const layout = useLayout();
  const rows = fitsOf(site, layout, gate);
  if (rows.length === 0) return null;
  const wrong = rows.some(({ fits }) => fits === false);
  return (
    <details className="more" open={wrong}>
      <summary
        className={wrong ? 'fault' : undefined}
      >{phrase`Hardware fit: ${fitSummary(rows)}`}</summary>
      <TableView table={fitTable(rows, name, site.lengths)} />
    </details>
  );
};
