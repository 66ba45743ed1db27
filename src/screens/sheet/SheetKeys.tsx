import { holeTable } from '../../drawing/tables/holeTable.ts';
import type { Page } from '../../drawing/sheet/page.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { siteFile } from '../../site/siteFile.ts';
import { useBench, useLayout, useSite } from '../bench.ts';
import { download } from '../files/download.ts';
import { fileStem } from '../../site/fileStem.ts';
import { makePdf } from './makePdf.ts';
import { usePdfFile } from './usePdfFile.ts';

interface Props {
  readonly pages: readonly Page[];
  readonly siteText: string;
}

/** The crew sheet as files: the set as a PDF, the holes as a table. */
export const SheetKeys = ({ pages, siteText }: Props) => {
  const { session, site: documents } = useBench();
  const site = useSite();
  const layout = useLayout();
  const { busy, save } = usePdfFile();
  const stem = fileStem(site.job.name);
  const savePdf = () =>
    save(`${stem}-crew-sheet.pdf`, () => {
      const file = siteFile(documents.getState().drawn(site));
      return makePdf({ pages, site, sort: 'Crew sheet', siteText, file });
    });
  const saveCsv = () => {
    const tables = Object.values(layout.lines).map((line) => holeTable(line, layout, site));
    const content = toCsv('Fence line', tables);
    const name = `${stem}-holes.csv`;
    download({ name, type: 'text/csv;charset=utf-8', content });
    session.setState({ say: `Saved ${name}` });
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
