import { useRef, useState, type FormEvent } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { addOffcut } from '../../site/edits/addOffcut.ts';
import { parseLength } from '../../units/parseLength.ts';
import type { Parsed } from '../../units/parsed.ts';
import { useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { useEdit } from '../yard/cards/useEdit.ts';
import { countIn } from './countIn.ts';
import { DraftField } from './DraftField.tsx';

interface Props {
  /** What the job is cut from, by the codes of its tickets; one at least. */
  readonly choices: readonly { readonly value: string; readonly label: string }[];
}

const faultOf = (read: Parsed<unknown>): string | null => (read.ok ? null : read.reason);

const nothingTyped = { length: '', count: '1' };
const noFaults = { length: null, count: null };

/** What lies in the yard and is not in the list yet, and the key that adds it. */
export const NewOffcut = ({ choices }: Props) => {
  const { lengths: style } = useSite();
  const edit = useEdit();
  const [chosen, setChosen] = useState('');
  const [typed, setTyped] = useState(nothingTyped);
  const [faults, setFaults] =
    useState<Readonly<Record<keyof typeof typed, string | null>>>(noFaults);
  const form = useRef<HTMLFormElement>(null);
  const of = (choices.find(({ value }) => value === chosen) ?? choices[0])?.value ?? '';
  const add = (event: FormEvent) => {
    event.preventDefault();
    const [length, count] = [parseLength(typed.length, style.system), countIn(typed.count)];
    if (!length.ok || !count.ok) {
      const said = faultOf(length);
      return setFaults({
        length: said === null ? null : phrase`Length: ${said}`,
        count: faultOf(count),
      });
    }
    const fault = edit(phrase`Add lengths in the yard`, (was) =>
      addOffcut(was, { of, length: length.value, count: count.value }),
    );
    setFaults({ length: fault, count: null });
    if (fault !== null) return;
    setTyped(nothingTyped);
    // one writes on with the next length
    form.current?.querySelector('input')?.focus();
  };
  return (
    <form ref={form} className="stack" aria-label={phrase`One more length`} onSubmit={add}>
      <ChoiceField
        label={phrase`Left over from`}
        value={of}
        choices={choices}
        onChoose={setChosen}
      />
      <div className="pair">
        <DraftField
          label={phrase`Length`}
          value={typed.length}
          fault={faults.length}
          onType={(length) => setTyped({ ...typed, length })}
        />
        <DraftField
          label={phrase`How many`}
          keys="numeric"
          value={typed.count}
          fault={faults.count}
          onType={(count) => setTyped({ ...typed, count })}
        />
      </div>
      <div className="choices">
        <button type="submit">{phrase`Add it`}</button>
      </div>
    </form>
  );
};
