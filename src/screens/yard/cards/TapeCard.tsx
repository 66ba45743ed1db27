import { changeObservation } from '../../../site/edits/changeObservation.ts';
import type { ObservationId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { ObservationRow } from '../survey/ObservationRow.tsx';
import { useEdit } from './useEdit.ts';

/** A tape across open ground: what it reads, how it agrees, how far it is trusted. */
export const TapeCard = ({ id }: { readonly id: ObservationId }) => {
  const seen = useSite().observations[id];
  const edit = useEdit();
  if (seen === undefined) return null;
  return (
    <section aria-label="Tape">
      <TextField
        label="Name"
        value={seen.label}
        onEnter={(text) =>
          edit('Name tape', (was) => changeObservation(was, id, { label: text.trim() }))
        }
      />
      <ol className="plain">
        <ObservationRow id={id} seen={seen} />
      </ol>
    </section>
  );
};
