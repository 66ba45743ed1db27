import { useState } from 'react';
import { orderRows } from '../../drawing/orders/orderTables.ts';
import { orderSheet } from '../../drawing/orders/orderSheet.ts';
import { unsignedGates } from '../../drawing/orders/unsignedGates.ts';
import { toCsv } from '../../exporters/csv/toCsv.ts';
import { sheetText } from '../../site/sheetText.ts';
import { useBench, useLayout, useSession, useSite } from '../bench.ts';
import { TickField } from '../fields/TickField.tsx';
import { download } from '../files/download.ts';
import { fileStem } from '../../site/fileStem.ts';
import { makePdf } from '../sheet/makePdf.ts';
import { paperOf } from '../sheet/paperOf.ts';
import { OwnLanguage } from '../sheet/OwnLanguage.tsx';
import { PaperField } from '../sheet/PaperField.tsx';
import { usePdfFile } from '../sheet/usePdfFile.ts';
import { phrase } from '../../phrases/phrase.ts';

/** The order of leaves and hardware as files, refused while an opening is not signed off. */
export const OrderKeys = () => {
  const { session, site: documents } = useBench();
  const site = useSite();
  const layout = useLayout();
  const sheet = useSession((state) => state.sheet);
  const [anyway, setAnyway] = useState(false);
  const [refused, setRefused] = useState(false);
  const { busy, save } = usePdfFile();
  const unsigned = unsignedGates(site, layout);
  const closed = unsigned.length > 0 && !anyway;
  const stem = `${fileStem(site.job.name)}-order${unsigned.length > 0 ? '-unsigned' : ''}`;
  const savePdf = () =>
    save(`${stem}.pdf`, () => {
      const siteText = sheetText(documents.getState().drawn(site));
      const pages = orderSheet(site, layout, { ...paperOf(sheet, site), siteText });
      return makePdf({ pages, site, sort: 'Order sheet', siteText, file: null });
    });
  const saveCsv = () => {
    const content = toCsv(phrase`Part`, orderRows(site, layout));
    const name = `${stem}.csv`;
    download({ name, type: 'text/csv;charset=utf-8', content });
    session.setState({ say: phrase`Saved ${name}` });
  };
  const unlessClosed = (deed: () => void) => () => {
    setRefused(closed);
    if (!closed) deed();
  };
  return (
    <section aria-label={phrase`Order sheet`} className="order">
      <h2>{phrase`Order sheet`}</h2>
      <div className="print">
        <PaperField />
        <div className="choices">
          <button type="button" disabled={busy} onClick={unlessClosed(() => void savePdf())}>
            {busy ? phrase`Making the PDF…` : phrase`Download order PDF`}
          </button>
          <button type="button" onClick={unlessClosed(saveCsv)}>
            {phrase`Download order CSV`}
          </button>
        </div>
      </div>
      <OwnLanguage of="pages" />
      {unsigned.length > 0 && (
        <TickField label={phrase`Print unsigned`} ticked={anyway} onTick={setAnyway} />
      )}
      {refused && closed && (
        <p className="fault" role="alert">
          {phrase`No order yet: expected every opening signed off, found ${unsigned.join(', ')}.`}
        </p>
      )}
      {unsigned.length > 0 && anyway && (
        <p className="note">{phrase`Every page and every line will be marked UNSIGNED.`}</p>
      )}
    </section>
  );
};
