import { useState } from 'react';
import { holeTable } from '../../drawing/tables/holeTable.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { useBench, useLayout, useSite } from '../bench.ts';
import { download, type Download } from '../files/download.ts';
import { fileStem } from '../files/fileStem.ts';
import { makePdf } from './makePdf.ts';

interface Props {
  readonly pages: readonly Page[];
  readonly siteText: string;
}

/** The crew sheet as files: the set as a PDF, the holes as a table. */
export const SheetKeys = ({ pages, siteText }: Props) => {
  const { session } = useBench();
  const site = useSite();
  const layout = useLayout();
  const [busy, setBusy] = useState(false);
  const stem = fileStem(site.job.name);
  const save = (file: Download) => {
    download(file);
    session.setState({ say: `Saved ${file.name}` });
  };
  const savePdf = async () => {
    setBusy(true);
    try {
      const bytes = await makePdf(pages, site, siteText);
      const content = new Uint8Array(bytes);
      save({ name: `${stem}-crew-sheet.pdf`, type: 'application/pdf', content });
    } catch {
      session.setState({
        say: 'The PDF could not be made: its parts are not on this device yet, and there is no connection',
      });
    }
    setBusy(false);
  };
  const saveCsv = () => {
    const tables = Object.values(layout.lines).map((line) => holeTable(line, layout, site));
    const content = toCsv('Fence line', tables);
    save({ name: `${stem}-holes.csv`, type: 'text/csv;charset=utf-8', content });
  };
  return (
    <div className="choices">
      <button type="button" className="chief" disabled={busy} onClick={() => void savePdf()}>
        {busy ? 'Making the PDF…' : 'Download PDF'}
      </button>
      <button type="button" onClick={saveCsv}>
        Download holes as CSV
      </button>
    </div>
  );
};
