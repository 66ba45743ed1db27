import { phrase, phraseOf } from '../../../phrases/phrase.ts';
import type { Alternative } from '../../../site/alternative.ts';
import { builtAs } from '../../../site/builtAs.ts';
import { changeAlternative } from '../../../site/edits/changeAlternative.ts';
import { moveAlternative } from '../../../site/edits/moveAlternative.ts';
import { removeAlternative } from '../../../site/edits/removeAlternative.ts';
import { takeAlternative } from '../../../site/edits/takeAlternative.ts';
import type { AlternativeId } from '../../../site/ids.ts';
import { useBench, useSite } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { useDo, useEdit } from '../../yard/cards/useEdit.ts';
import { idleBuilds } from './idleBuilds.ts';
import { InsteadField } from './InsteadField.tsx';
import { plannedBuilds } from './plannedBuilds.ts';
import { takenLabel } from './takenLabel.ts';

interface Props {
  readonly alternative: Alternative & { readonly id: AlternativeId };
  readonly place: 'only' | 'first' | 'between' | 'last';
}

/** The key that makes an alternative the plan; while it is built as the plan, a line that says so. */
const TakeKey = ({ alternative: { id, label, instead } }: Pick<Props, 'alternative'>) => {
  const { session } = useBench();
  const site = useSite();
  const edit = useEdit();
  if (builtAs(site, { instead }) === site) {
    return <p className="note">{phrase`Built as the plan so far: choose another build above.`}</p>;
  }
  const take = () => {
    const was = takenLabel(label);
    const fault = edit(phrase`Take ${label} as the plan`, (now) => takeAlternative(now, id, was));
    session.setState({
      say: fault ?? phrase`The plan is built as “${label}” now; what it was is kept as “${was}”`,
    });
  };
  return (
    <div className="choices">
      <button
        type="button"
        aria-label={phrase`Take as the plan: ${label}`}
        onClick={take}
      >{phrase`Take as the plan`}</button>
    </div>
  );
};

/** One other way to build the yard: its name, its builds, its place among the others. */
export const AlternativeCard = ({ alternative, place }: Props) => {
  const { id, label } = alternative;
  const site = useSite();
  const edit = useEdit();
  const make = useDo();
  const move = (to: 'before' | 'behind') =>
    make(phrase`Move ${label}`, (was) => moveAlternative(was, id, to));
  return (
    <li className="alternative" aria-label={label}>
      <TextField
        label={phraseOf('name')`Called`}
        value={label}
        onEnter={(text) =>
          edit(phrase`Name other way`, (was) => changeAlternative(was, id, { label: text }))
        }
      />
      <div className="halves">
        {[...plannedBuilds(site), ...idleBuilds(site, alternative)].map((of) => (
          <InsteadField key={of} alternative={id} of={of} />
        ))}
      </div>
      <TakeKey alternative={alternative} />
      <div className="choices">
        <button
          type="button"
          aria-label={phrase`Move up: ${label}`}
          disabled={place === 'first' || place === 'only'}
          onClick={() => move('before')}
        >{phrase`Move up`}</button>
        <button
          type="button"
          aria-label={phrase`Move down: ${label}`}
          disabled={place === 'last' || place === 'only'}
          onClick={() => move('behind')}
        >{phrase`Move down`}</button>
        <button
          type="button"
          aria-label={phrase`Remove: ${label}`}
          onClick={() => make(phrase`Remove ${label}`, (was) => removeAlternative(was, id))}
        >{phrase`Remove`}</button>
      </div>
    </li>
  );
};
