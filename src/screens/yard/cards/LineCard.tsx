import { closeLine } from '../../../site/edits/closeLine.ts';
import { openLine } from '../../../site/edits/openLine.ts';
import { removeLine } from '../../../site/edits/removeLine.ts';
import { renameLine } from '../../../site/edits/renameLine.ts';
import { reverseLine } from '../../../site/edits/reverseLine.ts';
import { setGuards } from '../../../site/edits/setGuards.ts';
import { setHook } from '../../../site/edits/setHook.ts';
import type { LineId } from '../../../site/ids.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useLayout, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { TapeFigure } from '../../help/why/TapeFigure.tsx';
import { BuildField } from './BuildField.tsx';
import { FollowsFields } from './FollowsFields.tsx';
import { SpecFields } from './SpecFields.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

const ends = [
  { value: 'start', label: phrase`Start of the line` },
  { value: 'end', label: phrase`End of the line` },
] as const;

/** A fence line: its name, where the tape is hooked, and how it is built. */
export const LineCard = ({ id }: { readonly id: LineId }) => {
  const site = useSite();
  const laid = useLayout().lines[id];
  const edit = useEdit();
  const make = useDo();
  const line = site.lines[id];
  if (line === undefined) return null;
  const long = laid === undefined ? phrase`Not laid out` : formatLength(laid.length, site.lengths);
  const legs = laid?.legs.length === 1 ? phrase`1 leg` : phrase`${laid?.legs.length ?? 0} legs`;
  return (
    <section aria-label={phrase`Fence line`}>
      <p className="note">
        {line.closed ? phrase`${long} along ${legs}, closed` : phrase`${long} along ${legs}, open`}
      </p>
      <TextField
        label={phrase`Name`}
        value={line.label}
        onEnter={(text) => edit(phrase`Name line`, (was) => renameLine(was, id, text.trim()))}
      />
      <ChoiceField
        label={phrase`Tape hooked at`}
        value={line.hook}
        choices={ends}
        onChoose={(hook) => make(phrase`Hook tape`, (was) => setHook(was, id, hook))}
      />
      <TapeFigure line={id} />
      <BuildField id={id} />
      <TickField
        label={phrase`Is the barrier round a pool`}
        ticked={line.guards === 'pool'}
        onTick={(on) =>
          make(phrase`Change what it guards`, (was) => setGuards(was, id, on ? 'pool' : null))
        }
      />
      <FollowsFields id={id} />
      <SpecFields id={line.spec} />
      <div className="choices">
        {line.closed ? (
          <button type="button" onClick={() => make(phrase`Open line`, (was) => openLine(was, id))}>
            {phrase`Open line`}
          </button>
        ) : (
          <button
            type="button"
            onClick={() => make(phrase`Close line`, (was) => closeLine(was, id))}
          >
            {phrase`Close line`}
          </button>
        )}
        <button
          type="button"
          onClick={() => make(phrase`Turn line round`, (was) => reverseLine(was, id))}
        >
          {phrase`Turn round`}
        </button>
        <button
          type="button"
          onClick={() => make(phrase`Delete line`, (was) => removeLine(was, id))}
        >
          {phrase`Delete line`}
        </button>
      </div>
    </section>
  );
};
