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
import { BuildField } from './BuildField.tsx';
import { FollowsFields } from './FollowsFields.tsx';
import { SpecFields } from './SpecFields.tsx';
import { useDo, useEdit } from './useEdit.ts';

const ends = [
  { value: 'start', label: 'Start of the line' },
  { value: 'end', label: 'End of the line' },
] as const;

/** A fence line: its name, where the tape is hooked, and how it is built. */
export const LineCard = ({ id }: { readonly id: LineId }) => {
  const site = useSite();
  const laid = useLayout().lines[id];
  const edit = useEdit();
  const make = useDo();
  const line = site.lines[id];
  if (line === undefined) return null;
  return (
    <section aria-label="Fence line">
      <p className="note">
        {laid === undefined ? 'Not laid out' : formatLength(laid.length, site.lengths)} along{' '}
        {laid?.legs.length === 1 ? '1 leg' : `${laid?.legs.length ?? 0} legs`},{' '}
        {line.closed ? 'closed' : 'open'}
      </p>
      <TextField
        label="Name"
        value={line.label}
        onEnter={(text) => edit('Name line', (was) => renameLine(was, id, text.trim()))}
      />
      <ChoiceField
        label="Tape hooked at"
        value={line.hook}
        choices={ends}
        onChoose={(hook) => make('Hook tape', (was) => setHook(was, id, hook))}
      />
      <BuildField id={id} />
      <TickField
        label="Is the barrier round a pool"
        ticked={line.guards === 'pool'}
        onTick={(on) =>
          make('Change what it guards', (was) => setGuards(was, id, on ? 'pool' : null))
        }
      />
      <FollowsFields id={id} />
      <SpecFields id={line.spec} />
      <div className="choices">
        {line.closed ? (
          <button type="button" onClick={() => make('Open line', (was) => openLine(was, id))}>
            Open line
          </button>
        ) : (
          <button type="button" onClick={() => make('Close line', (was) => closeLine(was, id))}>
            Close line
          </button>
        )}
        <button
          type="button"
          onClick={() => make('Turn line round', (was) => reverseLine(was, id))}
        >
          Turn round
        </button>
        <button type="button" onClick={() => make('Delete line', (was) => removeLine(was, id))}>
          Delete line
        </button>
      </div>
    </section>
  );
};
