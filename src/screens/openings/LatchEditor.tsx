import { addHardware } from '../../site/edits/addHardware.ts';
import { changeHardware } from '../../site/edits/changeHardware.ts';
import { setGateLatch } from '../../site/edits/setGateLatch.ts';
import type { GateId, HardwareId } from '../../site/ids.ts';
import { useSite } from '../bench.ts';
import { useDo, useEdit } from '../yard/cards/useEdit.ts';
import { MaybeLengthField } from './MaybeLengthField.tsx';
import { PartChoice } from './PartChoice.tsx';

interface Props {
  readonly gate: GateId;
  readonly id: HardwareId;
}

/** The latch or drop rod of a gate and the gap that is planned for it. */
export const LatchEditor = ({ gate, id }: Props) => {
  const site = useSite();
  const edit = useEdit();
  const make = useDo();
  const part = site.hardware[id];
  if (part === undefined) return null;
  const users = Object.values(site.gates).filter(({ latch }) => latch === id).length;
  return (
    <fieldset>
      <legend>Latch</legend>
      <PartChoice
        label="Latch or drop rod"
        id={id}
        kinds={['latch', 'drop rod']}
        gate={gate}
        on="latch"
        onChoose={(chosen) =>
          make('Change latch', (was) =>
            setGateLatch(addHardware(was, chosen.id, chosen.hardware), gate, chosen.id),
          )
        }
      />
      <MaybeLengthField
        label="Planned gap"
        value={part.takes.planned}
        style={site.lengths}
        {...(users > 1 && { note: `For all ${users} gates with this latch.` })}
        onEnter={(planned) => {
          if (planned === null) return 'Planned gap: expected a length';
          return edit('Plan gap', (was) =>
            changeHardware(was, id, { takes: { ...part.takes, planned } }),
          );
        }}
      />
    </fieldset>
  );
};
