import { pinGround } from '../../../editor/pinGround.ts';
import { alongOf, anchorAt } from '../../../site/anchor.ts';
import { changePin } from '../../../site/edits/changePin.ts';
import type { PinId } from '../../../site/ids.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { Inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

const froms = [
  { value: 'start', label: phrase`Start of leg` },
  { value: 'middle', label: phrase`Middle of leg` },
  { value: 'end', label: phrase`End of leg` },
] as const;

/** Where on its leg a post is held or ground is kept clear, told from the end that was chosen. */
export const PinPlace = ({ id }: { readonly id: PinId }) => {
  const site = useSite();
  const edit = useEdit();
  const make = useDo();
  const pin = site.pins[id];
  const ground = pin === undefined ? null : pinGround(site, pin);
  if (pin === undefined || ground === null) return null;
  const { length, station } = ground;
  const { lengths } = site;
  const move = (offset: Inches): string | null => {
    const anchor = { ...pin.anchor, offset };
    const along = alongOf(anchor, length);
    if (along < 0 || along > length) {
      return phrase`${formatLength(offset, lengths)} is off the leg: expected a place on its ${formatLength(length, lengths)}`;
    }
    return edit(phrase`Move hold`, (was) => changePin(was, id, { anchor }));
  };
  return (
    <div className="pair">
      <ChoiceField
        label={phrase`Measured from`}
        value={pin.anchor.from}
        choices={froms}
        onChoose={(from) =>
          make(phrase`Anchor hold`, (was) =>
            changePin(was, id, { anchor: anchorAt(from, station, length) }),
          )
        }
      />
      <LengthField
        label={pin.holds.kind === 'post' ? phrase`To its centre` : phrase`To its middle`}
        value={pin.anchor.offset}
        style={lengths}
        onEnter={move}
      />
    </div>
  );
};
