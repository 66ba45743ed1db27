import { useState } from 'react';
import { exactStyle } from '../../drawing/orders/exactStyle.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { GateId, HardwareId, LeafId } from '../../site/ids.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { PartPlan } from '../../store/plans.ts';
import { useBook, useLayout, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { sizeText } from '../fields/sizeText.ts';
import { misfit, mountsOf } from '../plans/misfit.ts';
import { offeredParts } from '../plans/offeredParts.ts';

interface Props {
  readonly label: string;
  readonly id: HardwareId;
  readonly kinds: readonly Hardware['kind'][];
  readonly gate: GateId;
  /** What the part is fixed to. */
  readonly on: LeafId | 'latch';
  readonly onChoose: (part: PartPlan) => void;
}

/** Which part is taken, of those that the site carries or can be given, and what it takes up. */
export const PartChoice = ({ label, id, kinds, gate, on, onChoose }: Props) => {
  const site = useSite();
  const book = useBook();
  const layout = useLayout();
  const [fault, setFault] = useState<string | null>(null);
  const part = site.hardware[id];
  if (part === undefined) return null;
  const offered = offeredParts(site, book, kinds);
  const { low, high } = part.takes;
  const style = exactStyle([low, high], site.lengths);
  const [from, to] = [formatLength(low, style), formatLength(high, style)];
  const verb = part.kind === 'hinge' ? 'Takes up' : 'Catches at';
  return (
    <div>
      <ChoiceField
        label={label}
        value={id}
        fault={fault}
        choices={offered.map((one) => ({ value: one.id, label: one.hardware.label }))}
        onChoose={(value) => {
          const chosen = offered.find((one) => one.id === value);
          const laid = layout.gates[gate];
          if (chosen === undefined || laid === undefined) return;
          const refused = misfit(chosen.hardware, mountsOf(site, layout, laid, on), (length) =>
            sizeText(length, site.lengths),
          );
          setFault(refused);
          if (refused === null) onChoose(chosen);
        }}
      />
      <p className="note">
        {verb} {low === high ? from : `${from} to ${to}`}, {part.from}
        {part.on !== '' && `, ${part.on}`}
      </p>
    </div>
  );
};
