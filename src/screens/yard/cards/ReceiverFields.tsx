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
import { phrase } from '../../../phrases/phrase.ts';

const grounds = [
  { value: 'firm soil', label: phrase`Firm soil` },
  { value: 'loose soil', label: phrase`Loose soil` },
  { value: 'concrete', label: phrase`Concrete` },
  { value: 'paving', label: phrase`Paving` },
] as const;

const kinds = [
  { value: 'driven pipe', label: phrase`Driven pipe` },
  { value: 'drilled', label: phrase`Drilled hole` },
  { value: 'set in concrete', label: phrase`Set in concrete` },
] as const;

const sizes = [
  { key: 'depth', label: phrase`Depth`, least: 'above' },
  { key: 'inside', label: phrase`Inside diameter`, least: 'above' },
  { key: 'rod', label: phrase`Rod, outside diameter`, least: 'above' },
  { key: 'lift', label: phrase`Rod lifts by`, least: 'zero' },
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
    make(phrase`Change receiver`, (was) => changeGate(was, id, { receiver: next }));
  return (
    <>
      <TickField
        label={phrase`The drop rod has a receiver`}
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
        label={phrase`Ground there`}
        value={receiver.ground}
        choices={grounds}
        // what the ground decides follows it; the rod stays the one that it is
        onChoose={(ground) => {
          const { kind, depth } = begin(ground);
          onSet({ ...receiver, ground, kind, depth });
        }}
      />
      <ChoiceField
        label={phrase`Receiver`}
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
              const found = sizeText(to, lengths);
              return least === 'zero'
                ? phrase`${label}: expected 0 or more, found ${found}`
                : phrase`${label}: expected more than 0, found ${found}`;
            }
            return edit(phrase`Change receiver`, (was) =>
              changeGate(was, id, { receiver: { ...receiver, [key]: to } }),
            );
          }}
        />
      ))}
    </div>
  );
};
