import { changeGate } from '../../../site/edits/changeGate.ts';
import type { Gate } from '../../../site/gate.ts';
import type { GateId } from '../../../site/ids.ts';
import type { Receiver } from '../../../site/receiver.ts';
import { receiverFor } from '../../../trade/receivers.ts';
import { useSite } from '../../bench.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { SizeField } from '../../fields/SizeField.tsx';
import { TickField } from '../../fields/TickField.tsx';
import { useDo, useEdit } from './useEdit.ts';

const grounds = [
  { value: 'firm soil', label: 'Firm soil' },
  { value: 'loose soil', label: 'Loose soil' },
  { value: 'concrete', label: 'Concrete' },
  { value: 'paving', label: 'Paving' },
] as const;

const kinds = [
  { value: 'driven pipe', label: 'Driven pipe' },
  { value: 'drilled', label: 'Drilled hole' },
  { value: 'set in concrete', label: 'Set in concrete' },
] as const;

const sizes = [
  { key: 'depth', label: 'Depth', least: 'above' },
  { key: 'inside', label: 'Inside diameter', least: 'above' },
  { key: 'rod', label: 'Rod, outside diameter', least: 'above' },
  { key: 'lift', label: 'Rod lifts by', least: 'zero' },
] as const;

/** What the trade begins with in a ground. */
const begin = (ground: Receiver['ground']): Receiver => {
  const { kind, depth, inside, rod, lift } = receiverFor(ground);
  return { kind, ground, depth, inside, rod, lift };
};

/** What the drop rod drops into, where anything was said of it. */
export const ReceiverFields = ({
  id,
  receiver,
}: { readonly id: GateId } & Pick<Gate, 'receiver'>) => {
  const make = useDo();
  const set = (next: Receiver | null) =>
    make('Change receiver', (was) => changeGate(was, id, { receiver: next }));
  return (
    <>
      <TickField
        label="The drop rod has a receiver"
        ticked={receiver !== null}
        onTick={(ticked) => set(ticked ? begin('firm soil') : null)}
      />
      {receiver !== null && <Told id={id} receiver={receiver} onSet={set} />}
    </>
  );
};

interface ToldProps {
  readonly id: GateId;
  readonly receiver: Receiver;
  readonly onSet: (receiver: Receiver) => void;
}

const Told = ({ id, receiver, onSet }: ToldProps) => {
  const { lengths } = useSite();
  const edit = useEdit();
  return (
    <div className="pair">
      <ChoiceField
        label="Ground there"
        value={receiver.ground}
        choices={grounds}
        // what the ground decides follows it; the rod stays the one that it is
        onChoose={(ground) => {
          const { kind, depth } = begin(ground);
          onSet({ ...receiver, ground, kind, depth });
        }}
      />
      <ChoiceField
        label="Receiver"
        value={receiver.kind}
        choices={kinds}
        onChoose={(kind) => onSet({ ...receiver, kind })}
      />
      {sizes.map(({ key, label, least }) => (
        <SizeField
          key={key}
          label={label}
          value={receiver[key]}
          style={lengths}
          onEnter={(to) => {
            if (!(to > 0) && !(to === 0 && least === 'zero')) {
              return `${label}: expected ${least === 'zero' ? '0 or more' : 'more than 0'}, found ${sizeText(to, lengths)}`;
            }
            return edit('Change receiver', (was) =>
              changeGate(was, id, { receiver: { ...receiver, [key]: to } }),
            );
          }}
        />
      ))}
    </div>
  );
};
