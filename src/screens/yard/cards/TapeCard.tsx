import { changeObservation } from '../../../site/edits/changeObservation.ts';
import type { ObservationId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { ObservationRow } from '../survey/ObservationRow.tsx';
import { useEdit } from './useEdit.ts';

/** A tape, or another reading of the list: what it reads, how it agrees, how far it is trusted. */
export const TapeCard = ({ id }: { readonly id: ObservationId }) => {
  const seen = useSite().observations[id];
  const edit = useEdit();
  if (seen === undefined) return null;
  return (
    <section aria-label={seen.kind === 'tape' ? 'Tape' : 'Reading'}>
      <TextField
        label="Name"
        value={seen.label}
        onEnter={(text) =>
          edit(seen.kind === 'tape' ? 'Name tape' : 'Name reading', (was) =>
            changeObservation(was, id, { label: text.trim() }),
          )
        }
      />
      <ol className="plain">
        <ObservationRow id={id} seen={seen} />
      </ol>
    </section>
  );
};
