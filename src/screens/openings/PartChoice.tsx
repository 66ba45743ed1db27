import { exactStyle } from '../../drawing/orders/exactStyle.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId } from '../../site/ids.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { PartPlan } from '../../store/plans.ts';
import { useBook, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { offeredParts } from '../plans/offeredParts.ts';

interface Props {
  readonly label: string;
  readonly id: HardwareId;
  readonly kinds: readonly Hardware['kind'][];
  readonly onChoose: (part: PartPlan) => void;
}

/** Which part is taken, of those that the site carries or can be given, and what it takes up. */
export const PartChoice = ({ label, id, kinds, onChoose }: Props) => {
  const site = useSite();
  const book = useBook();
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
        choices={offered.map((one) => ({ value: one.id, label: one.hardware.label }))}
        onChoose={(value) => {
          const chosen = offered.find((one) => one.id === value);
          if (chosen !== undefined) onChoose(chosen);
        }}
      />
      <p className="note">
        {verb} {low === high ? from : `${from} to ${to}`}, {part.from}
        {part.on !== '' && `, ${part.on}`}
      </p>
    </div>
  );
};
