import { useMemo } from 'react';
import { loadTable } from '../../drawing/tables/loadTable.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { useBench, useLayout, useSite } from '../bench.ts';
import { download } from '../files/download.ts';
import { fileStem } from '../files/fileStem.ts';
import { TableView } from '../TableView.tsx';

/** The screen that says what goes on the truck, each count with its rule. */
export const LoadList = () => {
  const { session } = useBench();
  const site = useSite();
  const layout = useLayout();
  const table = useMemo(() => loadTable(layout, site), [layout, site]);
  const save = () => {
    const name = `${fileStem(site.job.name)}-load-list.csv`;
    download({ name, type: 'text/csv;charset=utf-8', content: toCsv('List', [table]) });
    session.setState({ say: `Saved ${name}` });
  };
  return (
    <div className="page">
      <p className="lead">
        Everything that goes on the truck for this yard, with the rule that counted it. Check it
        against the hardware in hand before the truck leaves.
      </p>
      {table.rows.length === 0 ? (
        <p>
          Nothing to load yet. <a href="#yard">Draw a fence in the Yard.</a>
        </p>
      ) : (
        <>
          <div className="choices">
            <button type="button" className="chief" onClick={save}>
              Download CSV
            </button>
          </div>
          <TableView table={table} />
        </>
      )}
    </div>
  );
};
