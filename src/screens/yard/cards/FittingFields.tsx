import { addHardware } from '../../../site/edits/addHardware.ts';
import { changeGate } from '../../../site/edits/changeGate.ts';
import type { Gate } from '../../../site/gate.ts';
import type { GateId, HardwareId } from '../../../site/ids.ts';
import { useBook, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { MaybeLengthField } from '../../openings/MaybeLengthField.tsx';
import { offeredParts } from '../../plans/offeredParts.ts';
import { ReceiverFields } from './ReceiverFields.tsx';
import { useDo, useEdit } from './useEdit.ts';

interface Props {
  readonly id: GateId;
  readonly gate: Gate;
}

const none = 'none';

/** What is under and about the leaves: clearance, closer, hold-open post, receiver of the drop rod. */
export const FittingFields = ({ id, gate }: Props) => {
  const { lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  const turns = gate.way.kind === 'swing' || gate.way.kind === 'centre stop';
  const meets = gate.way.kind === 'swing' && Object.keys(gate.leaves).length === 2;
  return (
    <div className="stack">
      <MaybeLengthField
        label="Clear under the leaves"
        value={gate.bottom}
        style={lengths}
        onEnter={(bottom) =>
          bottom !== null && bottom < 0
            ? 'Clear under the leaves: expected 0 or more, or nothing'
            : edit('Set clearance', (was) => changeGate(was, id, { bottom }))
        }
      />
      {turns && <CloserField id={id} closer={gate.closer} />}
      {turns && (
        <TickField
          label="A post holds each leaf open"
          ticked={gate.holdOpen}
          onTick={(holdOpen) =>
            make('Change hold-open post', (was) => changeGate(was, id, { holdOpen }))
          }
        />
      )}
      {meets && <ReceiverFields id={id} receiver={gate.receiver} />}
    </div>
  );
};

const CloserField = ({ id, closer }: { readonly id: GateId } & Pick<Gate, 'closer'>) => {
  const site = useSite();
  const book = useBook();
  const make = useDo();
  const offered = offeredParts(site, book, ['closer']);
  return (
    <ChoiceField<HardwareId | typeof none>
      label="Closer"
      value={closer ?? none}
      choices={[
        { value: none, label: 'None' },
        ...offered.map((part) => ({ value: part.id, label: part.hardware.label })),
      ]}
      onChoose={(value) => {
        const part = offered.find((one) => one.id === value);
        make('Change closer', (was) =>
          part === undefined
            ? changeGate(was, id, { closer: null })
            : changeGate(addHardware(was, part.id, part.hardware), id, { closer: part.id }),
        );
      }}
    />
  );
};
