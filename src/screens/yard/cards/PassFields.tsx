import { changeGate } from '../../../site/edits/changeGate.ts';
import type { Gate } from '../../../site/gate.ts';
import type { GateId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { MaybeLengthField } from '../../fields/MaybeLengthField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly id: GateId;
  readonly gate: Gate;
}

const routes = [
  { value: 'none', label: phrase`Nobody has said` },
  { value: 'accessible', label: phrase`People in wheelchairs` },
  { value: 'fire', label: phrase`Fire engines` },
] as const;

/** What has to pass a gate, how high its latch is, and whether a motor moves it: what it is compared by. */
export const PassFields = ({ id, gate }: Props) => {
  const { lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  return (
    <div className="stack">
      <ChoiceField
        label={phrase`Has to let pass`}
        value={gate.route ?? 'none'}
        choices={routes}
        onChoose={(route) =>
          make(phrase`Change what passes`, (was) =>
            changeGate(was, id, { route: route === 'none' ? null : route }),
          )
        }
      />
      {gate.way.kind !== 'gap' && (
        <>
          <MaybeLengthField
            label={phrase`Latch over the ground`}
            value={gate.latchHeight}
            style={lengths}
            note={phrase`What releases it; empty where nobody has said.`}
            onEnter={(latchHeight) =>
              edit(phrase`Set latch height`, (was) => changeGate(was, id, { latchHeight }))
            }
          />
          <MaybeLengthField
            label={phrase`Sill in the opening stands up`}
            value={gate.threshold}
            style={lengths}
            note={phrase`The edge of the paving too; empty where nobody has said.`}
            onEnter={(threshold) =>
              edit(phrase`Set sill`, (was) => changeGate(was, id, { threshold }))
            }
          />
          <TickField
            label={phrase`A motor moves it`}
            ticked={gate.powered}
            onTick={(powered) =>
              make(phrase`Change motor`, (was) => changeGate(was, id, { powered }))
            }
          />
        </>
      )}
    </div>
  );
};
