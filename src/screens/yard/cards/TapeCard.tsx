import { changeObservation } from '../../../site/edits/changeObservation.ts';
import type { ObservationId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { ObservationRow } from '../survey/ObservationRow.tsx';
import { useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** A tape, or another reading of the list: what it reads, how it agrees, how far it is trusted. */
export const TapeCard = ({ id }: { readonly id: ObservationId }) => {
  const seen = useSite().observations[id];
  const edit = useEdit();
  if (seen === undefined) return null;
  return (
    <section aria-label={seen.kind === 'tape' ? phrase`Reading of a tape` : phrase`Reading`}>
      <TextField
        label={phrase`Name`}
        value={seen.label}
        onEnter={(text) =>
          edit(seen.kind === 'tape' ? phrase`Name tape` : phrase`Name reading`, (was) =>
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
