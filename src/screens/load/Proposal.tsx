import '../sheet/sheet.css';
import { useId } from 'react';
import type { CustomerPrices } from '../../engine/compare/customerPrices.ts';
import type { Load } from '../../engine/load/load.ts';
import { dpiRange } from '../../exporters/png/dpiRange.ts';
import { joined, phrase } from '../../phrases/phrase.ts';
import { fileStem } from '../../site/fileStem.ts';
import { makePdf } from '../sheet/makePdf.ts';
import { OwnLanguage } from '../sheet/OwnLanguage.tsx';
import { PaperField } from '../sheet/PaperField.tsx';
import { usePdfFile } from '../sheet/usePdfFile.ts';
import { PagePreview } from '../sheet/PagePreview.tsx';
import { useProposal } from './useProposal.ts';

/** So many missing things are named; the list of prices has them all. */
const mostNamed = 6;

/** What the company has to find before the page can say a total, or the totals of other ways to build it. */
const Missing = ({ price, missing }: CustomerPrices) => {
  if (missing.length === 0) return null;
  const named = joined(missing.slice(0, mostNamed), '; ');
  const more = missing.length - mostNamed;
  return (
    <p className="fault">
      {price.kind === 'open'
        ? phrase`No total yet: the page says that the price is still to be worked out.`
        : phrase`The page leaves out the other ways to build it until all of them have a total.`}{' '}
      {more > 0 ? phrase`Missing: ${named}; and ${more} more.` : phrase`Missing: ${named}.`}
    </p>
  );
};

/** The page for the customer: what is still missing for its total, its file, and how it will be printed. */
export const Proposal = ({ load }: { readonly load: Load }) => {
  const found = useProposal(load);
  const { busy, save } = usePdfFile();
  const id = useId();
  const savePdf = async () => {
    if (found === null) return;
    const { page, site, siteText } = found;
    const name = `${fileStem(site.job.name)}-proposal.pdf`;
    const set = { sort: 'Proposal', siteText, file: null } as const;
    await save(name, () => makePdf({ pages: [page], site, ...set }));
  };
  return (
    <section aria-label={phrase`Proposal`} className="stack">
      <h2>{phrase`Proposal`}</h2>
      <p className="note">{phrase`One page for the customer: the plan, what is included, and the total. It says nothing of costs, margin or hours, and carries no site file.`}</p>
      <OwnLanguage of="pages" />
      <div className="print">
        <PaperField />
        <div className="choices">
          <button
            type="button"
            className="chief"
            disabled={busy || found === null}
            aria-describedby={found === null ? `${id}-empty` : undefined}
            onClick={() => void savePdf()}
          >
            {busy ? phrase`Making the PDF…` : phrase`Download proposal`}
          </button>
        </div>
      </div>
      {found === null ? (
        <p id={`${id}-empty`}>{phrase`Nothing to propose yet: no fence and no gate is drawn.`}</p>
      ) : (
        <>
          <Missing {...found.prices} />
          {found.stops > 0 && (
            <p className="fault">
              {found.stops === 1
                ? phrase`A stop flag stands: the page says that it is not final.`
                : phrase`${found.stops} stop flags stand: the page says that it is not final.`}
            </p>
          )}
          <PagePreview dpi={dpiRange.usual} page={found.page} />
        </>
      )}
    </section>
  );
};
