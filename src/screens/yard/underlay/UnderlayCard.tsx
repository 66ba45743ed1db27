import { changeUnderlay } from '../../../site/edits/changeUnderlay.ts';
import { removeUnderlay } from '../../../site/edits/removeUnderlay.ts';
import type { UnderlayId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { useDo, useEdit } from '../cards/useEdit.ts';

/** A picture under the drawing. */
export const UnderlayCard = ({ id }: { readonly id: UnderlayId }) => {
  const edit = useEdit();
  const make = useDo();
  const underlay = useSite().underlays[id];
  if (underlay === undefined) return null;
  return (
    <section aria-label="Picture under the drawing">
      <TextField
        label="Name"
        value={underlay.label}
        onEnter={(label) =>
          edit('Name picture', (was) => changeUnderlay(was, id, { label: label.trim() }))
        }
      />
      <TickField
        label="Locked"
        ticked={underlay.locked}
        onTick={(locked) =>
          make(locked ? 'Lock picture' : 'Unlock picture', (was) =>
            changeUnderlay(was, id, { locked }),
          )
        }
      />
      <button
        type="button"
        onClick={() => make('Remove picture', (was) => removeUnderlay(was, id))}
      >
        Remove picture
      </button>
    </section>
  );
};
