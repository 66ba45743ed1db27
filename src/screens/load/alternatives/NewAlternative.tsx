import { useId, useState, type FormEvent } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import { addAlternative } from '../../../site/edits/addAlternative.ts';
import { useEdit } from '../../yard/cards/useEdit.ts';

/** The name of one more way to build the yard, and the key that adds it. */
export const NewAlternative = () => {
  const edit = useEdit();
  const id = useId();
  const [label, setLabel] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const add = (event: FormEvent) => {
    event.preventDefault();
    const found = edit(phrase`Add other way`, (was) => addAlternative(was, label));
    setFault(found);
    if (found === null) setLabel('');
  };
  return (
    <form className="stack" aria-label={phrase`One more way`} onSubmit={add}>
      <div className="field">
        <label htmlFor={id}>{phrase`Name of one more way`}</label>
        <input
          id={id}
          value={label}
          autoComplete="off"
          spellCheck={false}
          aria-invalid={fault !== null}
          aria-describedby={fault === null ? undefined : `${id}-said`}
          onChange={({ target }) => {
            // the line of a fault stays till the key is pressed anew: gone before, it would move the key away
            setLabel(target.value);
          }}
        />
        {fault !== null && (
          <p id={`${id}-said`} className="fault" role="alert">
            {fault}
          </p>
        )}
      </div>
      <div className="choices">
        <button type="submit">{phrase`Add it`}</button>
      </div>
    </form>
  );
};
