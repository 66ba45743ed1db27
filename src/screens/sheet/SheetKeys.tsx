import { rowsOf, sheetTables } from '../../drawing/tables/sheetTables.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { phrase } from '../../phrases/phrase.ts';
import { fileStem } from '../../site/fileStem.ts';
import { siteFile } from '../../site/siteFile.ts';
import { useBench, useLayout, useSite } from '../bench.ts';
import { asSaved } from '../merge/copies.ts';
import { download } from '../files/download.ts';
import { useSetFile } from './useSetFile.ts';
import type { DrawnSet } from './useSheetPages.ts';

interface Props {
  /** The set as it stands; null while it is being drawn. */
  readonly drawn: DrawnSet | null;
}

/** The crew sheet as files: the set as a PDF, the holes as a table. */
export const SheetKeys = ({ drawn }: Props) => {
  const bench = useBench();
  const { session, site: documents } = bench;
  const site = useSite();
  const layout = useLayout();
  const { progress, save, stop } = useSetFile();
  const stem = fileStem(site.job.name);
  const savePdf = async () => {
    if (drawn === null) return;
    const { pad, drawn: documentOf } = documents.getState();
    const own = { job: pad.job, document: documentOf(drawn.call.site) };
    const pdfWith = siteFile(await asSaved(bench.copies, own));
    const { reader } = drawn.call.options;
    const whose = reader === undefined ? '' : `-${reader}`;
    save(`${stem}-crew-sheet${whose}.pdf`, { ...drawn.call, wanted: { pdfWith } });
  };
  const saveCsv = () => {
    const { of, tables } = sheetTables('holes', site, layout);
    const content = toCsv(of, tables);
    const name = `${stem}-holes.csv`;
    download({ name, type: 'text/csv;charset=utf-8', content });
    const { none } = rowsOf(tables);
    session.setState({
      say: none === null ? phrase`Saved ${name}` : phrase`Saved ${name}: ${none}`,
    });
  };
  const pdfKey =
    progress === null ? (
      <button
        type="button"
        className="chief"
        data-point="pdf"
        disabled={drawn === null}
        onClick={() => void savePdf()}
      >{phrase`Download PDF`}</button>
    ) : (
      <button type="button" className="chief" onClick={stop}>
        {phrase`Stop the PDF`} <progress value={progress.done} max={progress.of + 1} />
      </button>
    );
  return (
    <div className="choices">
      {pdfKey}
      <button type="button" onClick={saveCsv}>{phrase`Download holes as CSV`}</button>
    </div>
  );
};
