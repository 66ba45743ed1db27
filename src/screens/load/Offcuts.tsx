import './offcuts.css';
import type { LoadTicket } from '../../engine/load/load.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { OffcutId } from '../../site/ids.ts';
import type { Offcut } from '../../site/offcut.ts';
import { useSite } from '../bench.ts';
import { NewOffcut } from './NewOffcut.tsx';
import { OffcutRow } from './OffcutRow.tsx';

interface Props {
  readonly tickets: readonly LoadTicket[];
}

/** What can be cut from a length that is left over, each code once; a panel is cut from its own. */
const choicesOf = (tickets: readonly LoadTicket[]) =>
  [
    ...new Map(
      tickets.filter(({ kind }) => kind !== 'panel').map(({ code, item }) => [code, item]),
    ),
  ].map(([value, label]) => ({ value, label }));

/** What lies in the yard for this job, cut up before anything is bought. */
export const Offcuts = ({ tickets }: Props) => {
  const { offcuts } = useSite();
  const choices = choicesOf(tickets);
  const all = Object.entries(offcuts) as [OffcutId, Offcut][];
  const other = new Set(
    all.map(([, { of }]) => of).filter((of) => choices.every(({ value }) => value !== of)),
  );
  if (choices.length === 0 && all.length === 0) return null;
  return (
    <section aria-label={phrase`Left over in the yard`} className="offcuts">
      <h2>{phrase`Left over in the yard`}</h2>
      <p>
        {all.length === 0
          ? phrase`Nothing is said to lie in the yard for this job. Add lengths that are left over from others: they are cut up first, and less is bought.`
          : phrase`Cut up first, and loaded beside what is bought. The list goes with this site alone: take off another job’s list what this one cuts up.`}
      </p>
      {other.size > 0 && (
        <p className="note">{phrase`Not of this job, and kept: ${[...other].join(', ')}. No ticket is cut from it.`}</p>
      )}
      {all.length > 0 && (
        <ul className="plain">
          {all.map(([id, offcut]) => (
            <OffcutRow key={id} id={id} offcut={offcut} choices={choices} />
          ))}
        </ul>
      )}
      {choices.length > 0 && <NewOffcut choices={choices} />}
    </section>
  );
};
