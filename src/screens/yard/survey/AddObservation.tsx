import { useState } from 'react';
import { markName } from '../../../engine/survey/markName.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { addObservation } from '../../../site/edits/addObservation.ts';
import { setTape } from '../../../site/edits/setTape.ts';
import type { MarkId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { useLayout, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { useEdit } from '../cards/useEdit.ts';
import { observationForms, type ObservationForm } from './observationForms.ts';

const forms = observationForms.map(({ kind, title }) => ({ value: kind, label: title }));

type Chosen = Readonly<Record<string, MarkId>>;

/** The marks of a form: what was chosen for each, else the next one that nothing else of it has. */
const marksFor = ({ roles }: ObservationForm, chosen: Chosen, all: readonly MarkId[]): MarkId[] =>
  roles.reduce<MarkId[]>((so, { role }) => {
    const picked = chosen[role];
    const free = all.find((id) => !so.includes(id));
    const mark = picked !== undefined && all.includes(picked) ? picked : free;
    return mark === undefined ? so : [...so, mark];
  }, []);

/** What was observed, added by naming its marks: for who does not tap them on the pad. */
export const AddObservation = () => {
  const site = useSite();
  const { posts } = useLayout();
  const edit = useEdit();
  const [kind, setKind] = useState<ObservationForm['kind']>('tape');
  const [chosen, setChosen] = useState<Chosen>({});
  const [figure, setFigure] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const form = observationForms.find((one) => one.kind === kind) ?? observationForms[0];
  const all = Object.keys(site.marks) as MarkId[];
  const choices = all.map((id) => ({ value: id, label: markName(site, posts, id) }));
  const marks = marksFor(form, chosen, all);
  if (all.length < 2) return null;
  const add = () => {
    const seen = form.read(marks, figure, site.lengths);
    if (!seen.ok) return setFault(seen.reason);
    const { value } = seen;
    const put = (was: Site): Site =>
      value.kind === 'tape'
        ? setTape(was, value.from, value.to, value.length)
        : addObservation(was, value);
    const refused = edit(phrase`Add reading`, put);
    setFault(refused);
    if (refused === null) setFigure('');
  };
  return (
    <details className="more">
      <summary>{phrase`Add a reading by its marks`}</summary>
      <form
        className="stack"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <ChoiceField
          label={phrase`What was read`}
          value={kind}
          choices={forms}
          onChoose={setKind}
        />
        {form.roles.map(({ role, label }, n) => (
          <ChoiceField
            key={role}
            label={label}
            value={marks[n] ?? ''}
            choices={choices}
            onChoose={(mark) => setChosen({ ...chosen, [role]: mark as MarkId })}
          />
        ))}
        {form.figure !== null && (
          <TextField
            label={form.figure}
            value={figure}
            onEnter={(text) => {
              setFigure(text);
              return null;
            }}
          />
        )}
        {fault !== null && (
          <p className="fault" role="alert">
            {fault}
          </p>
        )}
        <button type="submit">{phrase`Add it`}</button>
      </form>
    </details>
  );
};
