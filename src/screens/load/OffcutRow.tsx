import { phrase } from '../../phrases/phrase.ts';
import { changeOffcut } from '../../site/edits/changeOffcut.ts';
import { removeOffcut } from '../../site/edits/removeOffcut.ts';
import type { OffcutId } from '../../site/ids.ts';
import type { Offcut } from '../../site/offcut.ts';
import { formatLength } from '../../units/formatLength.ts';
import { useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { LengthField } from '../fields/LengthField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { useDo, useEdit } from '../yard/cards/useEdit.ts';
import { countIn } from './countIn.ts';

interface Props {
  readonly id: OffcutId;
  readonly offcut: Offcut;
  /** What the job is cut from, by the codes of its tickets. */
  readonly choices: readonly { readonly value: string; readonly label: string }[];
}

const changing = phrase`Change lengths in the yard`;

/** Lengths of one sort that lie in the yard: what they are of, how long each is and how many there are. */
export const OffcutRow = ({ id, offcut, choices }: Props) => {
  const { of, length, count } = offcut;
  const { lengths: style } = useSite();
  const edit = useEdit();
  const make = useDo();
  const change = (fields: Partial<Offcut>) =>
    edit(changing, (was) => changeOffcut(was, id, fields));
  const known = choices.find(({ value }) => value === of);
  const name = phrase`${count} of ${formatLength(length, style)}, ${known?.label ?? of}`;
  const own = known === undefined ? [{ value: of, label: phrase`${of}, not of this job` }] : [];
  return (
    <li className="offcut" aria-label={name}>
      <ChoiceField
        label={phrase`Left over from`}
        value={of}
        choices={[...own, ...choices]}
        onChoose={(chosen) => void change({ of: chosen })}
      />
      <div className="pair">
        <LengthField
          label={phrase`Length`}
          value={length}
          style={style}
          onEnter={(value) =>
            value > 0 ? change({ length: value }) : phrase`Length: expected more than 0`
          }
        />
        <TextField
          label={phrase`How many`}
          keys="decimal"
          value={String(count)}
          onEnter={(text) => {
            const found = countIn(text);
            return found.ok ? change({ count: found.value }) : found.reason;
          }}
        />
      </div>
      <div className="choices">
        <button
          type="button"
          aria-label={phrase`Remove: ${name}`}
          onClick={() => make(phrase`Remove lengths in the yard`, (was) => removeOffcut(was, id))}
        >{phrase`Remove`}</button>
      </div>
    </li>
  );
};
