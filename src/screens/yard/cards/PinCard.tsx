import { changePin } from '../../../site/edits/changePin.ts';
import { removePin } from '../../../site/edits/removePin.ts';
import type { PinId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { sizeText } from '../../fields/sizeText.ts';
import { PinPlace } from './PinPlace.tsx';
import { smallUnit } from '../../fields/smallUnit.ts';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Ground of a leg that is kept clear of holes: where it is, and how far it reaches. */
export const PinCard = ({ id }: { readonly id: PinId }) => {
  const { pins, lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  const pin = pins[id];
  if (pin?.holds.kind !== 'clear') return null;
  return (
    <section aria-label={phrase`Ground kept clear`}>
      <p className="note">{phrase`No part of a line post’s hole comes into this ground.`}</p>
      <PinPlace id={id} />
      <LengthField
        label={phrase`Reach, to each side`}
        value={pin.holds.reach}
        style={lengths}
        bare={smallUnit(lengths.system)}
        onEnter={(reach) =>
          reach > 0
            ? edit(phrase`Change reach`, (was) =>
                changePin(was, id, { holds: { kind: 'clear', reach } }),
              )
            : phrase`Reach ${sizeText(reach, lengths)}: expected more than 0`
        }
      />
      <button
        type="button"
        onClick={() => make(phrase`Remove kept-clear ground`, (was) => removePin(was, id))}
      >
        {phrase`Remove`}
      </button>
    </section>
  );
};
