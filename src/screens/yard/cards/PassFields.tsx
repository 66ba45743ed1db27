import { changeGate } from '../../../site/edits/changeGate.ts';
import type { Gate } from '../../../site/gate.ts';
import type { GateId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { MaybeLengthField } from '../../fields/MaybeLengthField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { useDo, useEdit } from './useEdit.ts';

interface Props {
  readonly id: GateId;
  readonly gate: Gate;
}

const routes = [
  { value: 'none', label: 'Nobody has said' },
  { value: 'accessible', label: 'People in wheelchairs' },
  { value: 'fire', label: 'Fire engines' },
] as const;

/** What has to pass a gate, how high its latch is, and whether a motor moves it: what it is compared by. */
export const PassFields = ({ id, gate }: Props) => {
  const { lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  return (
    <div className="stack">
      <ChoiceField
        label="Has to let pass"
        value={gate.route ?? 'none'}
        choices={routes}
        onChoose={(route) =>
          make('Change what passes', (was) =>
            changeGate(was, id, { route: route === 'none' ? null : route }),
          )
        }
      />
      {gate.way.kind !== 'gap' && (
        <>
          <MaybeLengthField
            label="Latch over the ground"
            value={gate.latchHeight}
            style={lengths}
            note="What releases it; empty where nobody has said."
            onEnter={(latchHeight) =>
              edit('Set latch height', (was) => changeGate(was, id, { latchHeight }))
            }
          />
          <MaybeLengthField
            label="Sill in the opening stands up"
            value={gate.threshold}
            style={lengths}
            note="The edge of the paving too; empty where nobody has said."
            onEnter={(threshold) => edit('Set sill', (was) => changeGate(was, id, { threshold }))}
          />
          <TickField
            label="A motor moves it"
            ticked={gate.powered}
            onTick={(powered) => make('Change motor', (was) => changeGate(was, id, { powered }))}
          />
        </>
      )}
    </div>
  );
};
