import { changeHardware } from '../../../site/edits/changeHardware.ts';
import type { Hardware } from '../../../site/hardware.ts';
import type { HardwareId } from '../../../site/ids.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import type { PartPlan } from '../../../store/plans.ts';
import { useBook, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { offeredParts } from '../../plans/offeredParts.ts';
import { smallUnit } from './SpecFields.tsx';
import { useDo, useEdit } from './useEdit.ts';

interface Props {
  readonly label: string;
  readonly id: HardwareId | null;
  readonly kinds: readonly Hardware['kind'][];
  readonly onChoose: (part: PartPlan) => void;
}

const origins = [
  { value: 'measured', label: 'Measured' },
  { value: 'book', label: 'From the book' },
  { value: 'assumed', label: 'Assumed' },
] as const;

const hingeWords = { low: 'Takes at least', planned: 'Plan with', high: 'Takes at most' };
const latchWords = { low: 'Catches from', planned: 'Plan gap', high: 'Catches to' };
const ends = ['low', 'planned', 'high'] as const;

/** A hinge or latch: which one, what it takes up, and how that is known. */
export const PartFields = ({ label, id, kinds, onChoose }: Props) => {
  const site = useSite();
  const book = useBook();
  const edit = useEdit();
  const make = useDo();
  const part = id === null ? undefined : site.hardware[id];
  if (id === null || part === undefined) return null;
  const offered = offeredParts(site, book, kinds);
  const words = part.kind === 'hinge' ? hingeWords : latchWords;
  const bare = smallUnit(site.lengths.system);
  const style = fineStyle({ ...site.lengths, fraction: 32 });
  return (
    <fieldset>
      <legend>{label}</legend>
      <ChoiceField
        label="Part"
        value={id}
        choices={offered.map((one) => ({ value: one.id, label: one.hardware.label }))}
        onChoose={(value) => {
          const chosen = offered.find((one) => one.id === value);
          if (chosen !== undefined) onChoose(chosen);
        }}
      />
      <div className="triple">
        {ends.map((end) => (
          <LengthField
            key={end}
            label={words[end]}
            value={part.takes[end]}
            style={style}
            bare={bare}
            onEnter={(value) =>
              edit(`Change ${part.label}`, (was) =>
                changeHardware(was, id, { takes: { ...part.takes, [end]: value } }),
              )
            }
          />
        ))}
      </div>
      <ChoiceField
        label="Known from"
        value={part.from}
        choices={origins}
        onChoose={(from) =>
          make(`Change ${part.label}`, (was) => changeHardware(was, id, { from }))
        }
      />
    </fieldset>
  );
};
