import { addHardware } from '../../../site/edits/addHardware.ts';
import { removeGate } from '../../../site/edits/removeGate.ts';
import { renameGate } from '../../../site/edits/renameGate.ts';
import { setGateHinged } from '../../../site/edits/setGateHinged.ts';
import { setGateLatch } from '../../../site/edits/setGateLatch.ts';
import { setGateLeaves } from '../../../site/edits/setGateLeaves.ts';
import { setGateOpens } from '../../../site/edits/setGateOpens.ts';
import type { GateId, LeafId } from '../../../site/ids.ts';
import type { Leaf } from '../../../site/gate.ts';
import { inOrder } from '../../../site/pathOrder.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useLayout, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { Working } from '../../openings/Working.tsx';
import { AnchorFields } from './AnchorFields.tsx';
import { LeafFields } from './LeafFields.tsx';
import { PartFields } from './PartFields.tsx';
import { useDo, useEdit } from './useEdit.ts';

const counts = [
  { value: '1', label: 'Single' },
  { value: '2', label: 'Double' },
] as const;

const sides = [
  { value: 'left', label: 'Left of line' },
  { value: 'right', label: 'Right of line' },
] as const;

const hinged = [
  { value: 'start', label: 'Start post' },
  { value: 'end', label: 'End post' },
] as const;

/** A gate: the opening it needs, with its working, and everything that leads to it. */
export const GateCard = ({ id }: { readonly id: GateId }) => {
  const site = useSite();
  const laid = useLayout().gates[id];
  const edit = useEdit();
  const make = useDo();
  const gate = site.gates[id];
  if (gate === undefined) return null;
  const leaves = inOrder<LeafId, Leaf>(gate.leaves);
  const single = leaves.length === 1;
  return (
    <section aria-label="Gate">
      {laid !== undefined && (
        <>
          <p className="answer">
            <span>Opening to hold</span>
            <strong>{formatLength(laid.opening.target, fineStyle(site.lengths))}</strong>
          </p>
          <details className="more">
            <summary>Working</summary>
            <Working opening={laid.opening} style={site.lengths} name={gate.label} />
          </details>
        </>
      )}
      <TextField
        label="Name"
        value={gate.label}
        onEnter={(text) => edit('Name gate', (was) => renameGate(was, id, text.trim()))}
      />
      <AnchorFields id={id} gate={gate} />
      <div className="pair">
        <ChoiceField
          label="Leaves"
          value={single ? '1' : '2'}
          choices={counts}
          onChoose={(count) =>
            make('Change leaves', (was) => setGateLeaves(was, id, count === '1' ? 1 : 2))
          }
        />
        <ChoiceField
          label="Opens to the"
          value={gate.opens}
          choices={sides}
          onChoose={(opens) => make('Change swing', (was) => setGateOpens(was, id, opens))}
        />
        {single && (
          <ChoiceField
            label="Hinged at the"
            value={gate.hingedAt}
            choices={hinged}
            onChoose={(end) => make('Change hinge side', (was) => setGateHinged(was, id, end))}
          />
        )}
      </div>
      {leaves.map(({ id: leafId, ...leaf }, n) => (
        <LeafFields
          key={leafId}
          gate={id}
          id={leafId}
          leaf={leaf}
          name={single ? 'Leaf' : `Leaf ${n + 1}`}
        />
      ))}
      <PartFields
        label={single ? 'Latch' : 'Drop rod or latch'}
        id={gate.latch}
        kinds={['latch', 'drop rod']}
        onChoose={(part) =>
          make('Change latch', (was) =>
            setGateLatch(addHardware(was, part.id, part.hardware), id, part.id),
          )
        }
      />
      <button type="button" onClick={() => make('Delete gate', (was) => removeGate(was, id))}>
        Delete gate
      </button>
    </section>
  );
};
