import { useState } from 'react';
import type { GateLayout } from '../../../engine/layout.ts';
import { addHardware } from '../../../site/edits/addHardware.ts';
import { changeGate } from '../../../site/edits/changeGate.ts';
import type { Gate } from '../../../site/gate.ts';
import type { HardwareId } from '../../../site/ids.ts';
import type { Site } from '../../../site/site.ts';
import { useBook, useLayout, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { sizeText } from '../../fields/sizeText.ts';
import { TickField } from '../../fields/TickField.tsx';
import { MaybeLengthField } from '../../fields/MaybeLengthField.tsx';
import { fittingOnly } from '../../plans/fittingOnly.ts';
import { offeredParts } from '../../plans/offeredParts.ts';
import { ReceiverFields } from './ReceiverFields.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly gate: Gate;
  readonly laid: GateLayout;
}

const none = 'none';

/** What is under and about the leaves: clearance, closer, hold-open post, receiver of the drop rod. */
export const FittingFields = ({ gate, laid }: Props) => {
  const { id } = laid;
  const { lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  const turns = gate.way.kind === 'swing' || gate.way.kind === 'centre stop';
  const meets = gate.way.kind === 'swing' && Object.keys(gate.leaves).length === 2;
  return (
    <div className="stack">
      <MaybeLengthField
        label={phrase`Clear under the leaves`}
        value={gate.bottom}
        style={lengths}
        onEnter={(bottom) =>
          bottom !== null && bottom < 0
            ? phrase`Clear under the leaves: expected 0 or more, or nothing, found ${sizeText(bottom, lengths)}`
            : edit(phrase`Set clearance`, (was) => changeGate(was, id, { bottom }))
        }
      />
      {turns && <CloserField laid={laid} closer={gate.closer} />}
      {turns && (
        <TickField
          label={phrase`A post holds each leaf open`}
          ticked={gate.holdOpen}
          onTick={(holdOpen) =>
            make(phrase`Change hold-open post`, (was) => changeGate(was, id, { holdOpen }))
          }
        />
      )}
      {meets && <ReceiverFields id={id} receiver={gate.receiver} />}
    </div>
  );
};

const CloserField = ({ laid, closer }: Pick<Props, 'laid'> & Pick<Gate, 'closer'>) => {
  const site = useSite();
  const layout = useLayout();
  const book = useBook();
  const edit = useEdit();
  const [fault, setFault] = useState<string | null>(null);
  const offered = offeredParts(site, book, ['closer']);
  return (
    <ChoiceField<HardwareId | typeof none>
      label={phrase`Closer`}
      value={closer ?? none}
      fault={fault}
      choices={[
        { value: none, label: phrase`None` },
        ...offered.map((part) => ({ value: part.id, label: part.hardware.label })),
      ]}
      onChoose={(value) => {
        const part = offered.find((one) => one.id === value);
        const fitted = (before: Site): Site => {
          const stocked = part === undefined ? before : addHardware(before, part.id, part.hardware);
          const after = changeGate(stocked, laid.id, { closer: part?.id ?? null });
          return fittingOnly(layout, laid, { before, after });
        };
        setFault(edit(phrase`Change closer`, fitted));
      }}
    />
  );
};
