import { useMemo, useState } from 'react';
import { cutTable } from '../../drawing/tables/cutTable.ts';
import { loadTable } from '../../drawing/tables/loadTable.ts';
import { loadParts } from '../../engine/loadLine.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useLayout, useSite } from '../bench.ts';
import { download } from '../files/download.ts';
import { fileStem } from '../../site/fileStem.ts';
import { rememberLoads } from '../../store/rememberLoads.ts';
import { TableView } from '../TableView.tsx';
import { Alternatives } from './alternatives/Alternatives.tsx';
import { CountingFields } from './CountingFields.tsx';
import { CountingKeys } from './CountingKeys.tsx';
import { LoadPartView } from './LoadPartView.tsx';
import { Offcuts } from './Offcuts.tsx';
import { Prices } from './Prices.tsx';
import { Proposal } from './Proposal.tsx';
import { RuleCounts } from './RuleCounts.tsx';
import { WorkFields } from './WorkFields.tsx';

/** The screen that says what goes on the truck, each count with its rule, and how it is cut. */
export const LoadList = () => {
  const { session } = useBench();
  const site = useSite();
  const layout = useLayout();
  const [loadOf] = useState(rememberLoads);
  const load = useMemo(() => loadOf(site, layout), [layout, loadOf, site]);
  const { lines, tickets } = load;
  const cuts = tickets.map((one) => cutTable(one, site));
  const save = (what: string, content: string) => {
    const name = `${fileStem(site.job.name)}-${what}.csv`;
    download({ name, type: 'text/csv;charset=utf-8', content });
    session.setState({ say: phrase`Saved ${name}` });
  };
  return (
    <div className="page">
      <p className="lead">{phrase`Everything that goes on the truck for this yard, with the rule that counted it. Check it against the hardware in hand before the truck leaves.`}</p>
      {lines.length === 0 ? (
        <p>
          {phrase`Nothing to load yet.`} <a href="#yard">{phrase`Draw a fence in the Yard.`}</a>
        </p>
      ) : (
        <>
          <div className="choices">
            <button
              type="button"
              className="chief"
              onClick={() => save('load-list', toCsv(phrase`List`, [loadTable({ lines }, site)]))}
            >{phrase`Download CSV`}</button>
            {cuts.length > 0 && (
              <button
                type="button"
                onClick={() => save('cuts', toCsv(phrase`Cut of`, cuts))}
              >{phrase`Download cut tickets`}</button>
            )}
          </div>
          {loadParts.map((part) => (
            <LoadPartView key={part} part={part} lines={lines} />
          ))}
          <h2>{phrase`Cut tickets`}</h2>
          {cuts.map((table) => (
            <TableView key={table.title} table={table} />
          ))}
        </>
      )}
      <Offcuts tickets={tickets} />
      {lines.length > 0 && (
        <>
          <h2>{phrase`Prices and work`}</h2>
          <WorkFields />
          <Prices load={load} save={save} />
        </>
      )}
      {(lines.length > 0 || Object.keys(site.alternatives).length > 0) && (
        <Alternatives save={save} />
      )}
      <Proposal load={load} />
      <details className="more">
        <summary>{phrase`How this company counts`}</summary>
        <div className="stack">
          <CountingFields />
          <CountingKeys />
        </div>
      </details>
      <details className="more">
        <summary>{phrase`What every rule takes`}</summary>
        <RuleCounts />
      </details>
    </div>
  );
};
