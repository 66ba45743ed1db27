import './underlay.css';
import { useEffect, useRef, useState } from 'react';
import { useLatest } from '../../../canvas/useLatest.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { useBench } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { SheetOver } from '../../frame/SheetOver.tsx';
import { layPage } from '../../pictures/layPage.ts';
import type { OpenPdf } from '../../pictures/openPdf.ts';
import { PagePicture } from './PagePicture.tsx';
import { usePdf } from './usePdf.ts';

interface ChoiceProps {
  readonly pdf: OpenPdf;
  readonly onTake: (n: number) => void;
}

const PageChoice = ({ pdf, onTake }: ChoiceProps) => {
  const [n, setN] = useState(1);
  const to = (page: number) => setN(Math.min(pdf.pages, Math.max(1, page)));
  return (
    <div className="stack">
      <div className="page-keys">
        <button type="button" disabled={n === 1} onClick={() => to(n - 1)}>
          {phrase`Page before`}
        </button>
        <TextField
          label={phrase`Page, 1 to ${pdf.pages}`}
          keys="decimal"
          value={String(n)}
          onEnter={(text) => {
            const page = Number(text);
            if (!Number.isInteger(page) || page < 1 || page > pdf.pages) {
              return phrase`Page: expected a whole number from 1 to ${pdf.pages}, found ${text}`;
            }
            to(page);
            return null;
          }}
        />
        <button type="button" disabled={n === pdf.pages} onClick={() => to(n + 1)}>
          {phrase`Next page`}
        </button>
      </div>
      <PagePicture pdf={pdf} n={n} />
      <button type="button" className="chief" onClick={() => onTake(n)}>
        {phrase`Put page ${n} under the drawing`}
      </button>
    </div>
  );
};

interface Props {
  readonly file: File;
  readonly onDone: () => void;
}

/** The pages of a PDF, one of which comes under the drawing; a PDF of one page comes at once. */
export const PageSheet = ({ file, onDone }: Props) => {
  const bench = useBench();
  const pdf = usePdf(file);
  const [said, setSaid] = useState<string | null>(null);
  const taking = useRef(false);
  const take = async (opened: OpenPdf, n: number) => {
    if (taking.current) return;
    taking.current = true;
    setSaid(phrase`Drawing page ${n}…`);
    const fault = await layPage(bench, { file, pdf: opened, n });
    // a sheet that was put away meanwhile has let go of its PDF, and that is no fault
    if (bench.page.getState() !== file) return;
    if (fault !== null) bench.session.setState({ say: fault });
    onDone();
  };
  const only = pdf?.ok === true && pdf.value.pages === 1 ? pdf.value : null;
  const latest = useLatest(take);
  useEffect(() => {
    if (only !== null) void latest.current(only, 1);
  }, [only, latest]);
  return (
    <SheetOver title={phrase`Which page?`} onClose={onDone}>
      <p>
        <b>{file.name}</b>
      </p>
      {pdf !== null && !pdf.ok && (
        <p className="fault" role="alert">
          {phrase`${file.name}: ${pdf.reason}; the drawing is as it was`}
        </p>
      )}
      {(pdf === null || said !== null || only !== null) && (
        <p role="status">{said ?? phrase`Reading it…`}</p>
      )}
      {pdf !== null && pdf.ok && only === null && said === null && (
        <PageChoice pdf={pdf.value} onTake={(n) => void take(pdf.value, n)} />
      )}
    </SheetOver>
  );
};
