import { useState } from 'react';
import { orderRows } from '../../drawing/orders/orderTables.ts';
import { orderSheet } from '../../drawing/orders/orderSheet.ts';
import { unsignedGates } from '../../drawing/orders/unsignedGates.ts';
import { papers } from '../../drawing/sheet/papers.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { sheetText } from '../../site/sheetText.ts';
import { sheetPapers } from '../../store/sheetOptions.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TickField } from '../fields/TickField.tsx';
import { download, type Download } from '../files/download.ts';
import { fileStem } from '../files/fileStem.ts';
import { makePdf } from '../sheet/makePdf.ts';

const paperChoices = sheetPapers.map((value) => ({ value, label: papers[value].label }));

/** The order of leaves and hardware as files, refused while an opening is not signed off. */
export const OrderKeys = () => {
  const { session, site: documents } = useBench();
  const site = useSite();
  const layout = useLayout();
  const sheet = useSession((state) => state.sheet);
  const [anyway, setAnyway] = useState(false);
  const [refused, setRefused] = useState(false);
  const [busy, setBusy] = useState(false);
  const unsigned = unsignedGates(site, layout);
  const closed = unsigned.length > 0 && !anyway;
  const stem = `${fileStem(site.job.name)}-order${unsigned.length > 0 ? '-unsigned' : ''}`;
  const save = (file: Download) => {
    download(file);
    session.setState({ say: `Saved ${file.name}` });
  };
  const savePdf = async () => {
    setBusy(true);
    try {
      const siteText = sheetText(documents.getState().drawn(site));
      const { paper, orientation } = sheet;
      const way = orientation === 'fitting' ? {} : { orientation };
      const pages = orderSheet(site, layout, { paper, ...way, siteText });
      const content = new Uint8Array(await makePdf(pages, site, siteText, 'Order sheet'));
      save({ name: `${stem}.pdf`, type: 'application/pdf', content });
    } catch {
      session.setState({
        say: 'The PDF could not be made: its parts are not on this device yet, and there is no connection',
      });
    }
    setBusy(false);
  };
  const saveCsv = () => {
    const content = toCsv('Part', orderRows(site, layout));
    save({ name: `${stem}.csv`, type: 'text/csv;charset=utf-8', content });
  };
  const unlessClosed = (deed: () => void) => () => {
    setRefused(closed);
    if (!closed) deed();
  };
  return (
    <section aria-label="Order sheet" className="order">
      <h2>Order sheet</h2>
      <div className="print">
        <ChoiceField
          label="Paper"
          value={sheet.paper}
          choices={paperChoices}
          onChoose={(paper) => session.setState({ sheet: { ...sheet, paper } })}
        />
        <div className="choices">
          <button type="button" disabled={busy} onClick={unlessClosed(() => void savePdf())}>
            {busy ? 'Making the PDF…' : 'Download order PDF'}
          </button>
          <button type="button" onClick={unlessClosed(saveCsv)}>
            Download order CSV
          </button>
        </div>
      </div>
      {unsigned.length > 0 && (
        <TickField label="Print unsigned" ticked={anyway} onTick={setAnyway} />
      )}
      {refused && closed && (
        <p className="fault" role="alert">
          No order yet: expected every opening signed off, found {unsigned.join(', ')}.
        </p>
      )}
      {unsigned.length > 0 && anyway && (
        <p className="note">Every page and every line will be marked UNSIGNED.</p>
      )}
    </section>
  );
};
