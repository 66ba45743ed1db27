import { useState } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import type { GatePlan, PartPlan } from '../../../store/plans.ts';
import { useBook, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import type { GateParts } from '../../plans/gatePlan.ts';
import { offeredParts } from '../../plans/offeredParts.ts';
import { withParts } from '../../plans/withParts.ts';

interface Props {
  readonly gate: GatePlan;
  readonly onPlan: (gate: GatePlan) => void;
}

const rows = [
  { key: 'hinge', label: phrase`Its hinges`, kinds: ['hinge'] },
  { key: 'latch', label: phrase`Its latch`, kinds: ['latch', 'drop rod'] },
] as const;

/** The hinges and latch of the next gate, out of the site and the hardware book. */
export const NextParts = ({ gate, onPlan }: Props) => {
  const site = useSite();
  const book = useBook();
  const [fault, setFault] = useState<string | null>(null);
  const [leaf] = gate.leaves;
  if (leaf === undefined) return null;
  const parts: GateParts = { hinge: leaf.hinge, latch: gate.latch };
  const take = (next: GateParts) => {
    try {
      onPlan(withParts(gate, next));
      setFault(null);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      setFault(error.message);
    }
  };
  return (
    <details className="more">
      <summary>
        {parts.hinge.hardware.label}; {parts.latch.hardware.label}
      </summary>
      <div className="stack">
        {rows.map(({ key, label, kinds }) => {
          const own = parts[key];
          const found = offeredParts(site, book, kinds);
          const offered: readonly PartPlan[] = found.some(({ id }) => id === own.id)
            ? found
            : [own, ...found];
          return (
            <ChoiceField
              key={key}
              label={label}
              value={own.id}
              choices={offered.map(({ id, hardware }) => ({ value: id, label: hardware.label }))}
              onChoose={(value) => {
                const chosen = offered.find(({ id }) => id === value);
                if (chosen !== undefined) take({ ...parts, [key]: chosen });
              }}
            />
          );
        })}
        {fault !== null && (
          <p className="fault" role="alert">
            {fault}
          </p>
        )}
      </div>
    </details>
  );
};
