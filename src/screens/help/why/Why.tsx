import './why.css';
import { useId, useState, type ReactNode } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import { withLook } from '../../../store/tour.ts';
import { useBench } from '../../bench.ts';
import type { Reason } from './reason.ts';

interface Props {
  /** The figure that is asked about, as one names it: the opening to hold. */
  readonly of: string;
  /** Asked for once somebody wants to know. */
  readonly reasons: () => readonly Reason[];
  /** Whether the tour looks out for it. */
  readonly toured?: 'opening';
  /** What shows the figure. */
  readonly children: ReactNode;
}

const Reasons = ({ of, reasons }: { readonly of: string; readonly reasons: readonly Reason[] }) => (
  <ul className="reasons" aria-label={of}>
    {reasons.map(({ says, source }) => (
      <li key={`${says} ${source}`}>
        {says} <small>{source}</small>
      </li>
    ))}
  </ul>
);

/** A figure with a key beside it that opens its reasons, each with its source. */
export const Why = ({ of, reasons, toured, children }: Props) => {
  const { session } = useBench();
  const id = useId();
  const [open, setOpen] = useState(false);
  const press = () => {
    setOpen(!open);
    // read is what was opened and put away again
    if (toured === undefined || !open) return;
    session.setState(({ tour }) => ({ tour: withLook(tour, toured) }));
  };
  return (
    <div className="figured">
      <div className="figure">{children}</div>
      <button
        type="button"
        className="why"
        data-point={toured === undefined ? undefined : `why ${toured}`}
        aria-expanded={open}
        aria-controls={open ? id : undefined}
        onClick={press}
      >
        {phrase`Why`}
        <span className="unseen"> {of}</span>
      </button>
      {open && (
        <div id={id} className="behind">
          <Reasons of={of} reasons={reasons()} />
        </div>
      )}
    </div>
  );
};
