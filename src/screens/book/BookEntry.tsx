import { phrase } from '../../phrases/phrase.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { PartPlan } from '../../store/plans.ts';
import { useSite } from '../bench.ts';
import { TextField } from '../fields/TextField.tsx';
import { PartForm } from './PartForm.tsx';
import { partLine } from './partWords.ts';
import { useBookChange } from './useBookChange.ts';

interface Props {
  readonly entry: PartPlan;
  readonly open: boolean;
  readonly onOpen: () => void;
  readonly onCopy: () => void;
  readonly onDelete: () => void;
  /** Where a part is being chosen for a gate. */
  readonly onTake?: (() => void) | undefined;
}

/** One part of the book; unfolded, everything that is known of it. */
export const BookEntry = ({ entry, open, onOpen, onCopy, onDelete, onTake }: Props) => {
  const { lengths } = useSite();
  const { id, hardware: part } = entry;
  const change = useBookChange();
  const put = (next: Hardware) => change(phrase`Change ${part.label}`, { [id]: next });
  return (
    <li className="entry">
      <div className="entry-head">
        <p>
          <strong>{part.label}</strong>
          <span>{partLine(part, lengths)}</span>
        </p>
        {onTake !== undefined && (
          <button
            type="button"
            className="chief"
            onClick={onTake}
            aria-label={phrase`Take ${part.label}`}
          >{phrase`Take`}</button>
        )}
        <button
          type="button"
          onClick={onOpen}
          aria-expanded={open}
          aria-label={open ? phrase`Close ${part.label}` : phrase`Edit ${part.label}`}
        >
          {open ? phrase`Close` : phrase`Edit`}
        </button>
      </div>
      {open && (
        <div className="stack" role="group" aria-label={part.label}>
          <TextField
            label={phrase`Name`}
            value={part.label}
            onEnter={(text) => {
              const label = text.trim();
              return label === '' ? phrase`Name: expected one` : put({ ...part, label });
            }}
          />
          <PartForm part={part} style={lengths} onChange={put} />
          <div className="choices">
            <button type="button" onClick={onCopy}>{phrase`Copy`}</button>
            <button type="button" onClick={onDelete}>{phrase`Delete from the book`}</button>
          </div>
        </div>
      )}
    </li>
  );
};
