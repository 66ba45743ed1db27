import { phrase } from '../../../phrases/phrase.ts';
import type { GatePlan } from '../../../store/plans.ts';
import { standardGates } from '../../../trade/standardGates.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { sum, type Inches } from '../../../units/inches.ts';
import { useBench, useBook, useSession, useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { SizeField } from '../../fields/SizeField.tsx';
import { sizeText } from '../../fields/sizeText.ts';
import { gatePlan, usualParts } from '../../plans/gatePlan.ts';
import { NextParts } from './NextParts.tsx';

const wholeInch = { system: 'feet', fraction: 8 } as const;

/** The openings that gates are sold for, each with its number of leaves. */
const sold = standardGates.map(({ leaves, opening }) => ({
  value: `${leaves} ${opening}`,
  label:
    leaves === 1
      ? phrase`Single, sold for ${formatLength(opening, wholeInch)}`
      : phrase`Double, sold for ${formatLength(opening, wholeInch)}`,
  leaves,
  opening,
}));

const soldAs = ({ leaves, nominal }: GatePlan): string => `${leaves.length} ${nominal ?? 0}`;

const openingOf = ({ leaves, latch }: GatePlan): Inches =>
  sum([
    ...leaves.flatMap(({ width, hinge }) => [width, hinge.hardware.takes.planned]),
    latch.hardware.takes.planned,
  ]);

/** What the next gate will be: one that is sold, then the width of each leaf as it was measured. */
export const NextGate = () => {
  const { session } = useBench();
  const { lengths } = useSite();
  const book = useBook();
  const { gate } = useSession((state) => state.plans);
  const plan = (next: GatePlan) =>
    session.setState(({ plans }) => ({ plans: { ...plans, gate: next } }));
  const setLeaf = (n: number, width: Inches): string | null => {
    if (!(width > 0))
      return phrase`Leaf ${n + 1}: expected more than 0, found ${sizeText(width, lengths)}`;
    const leaves = gate.leaves.map((leaf, at) =>
      at === n ? { ...leaf, width, from: 'measured' as const } : leaf,
    );
    plan({ ...gate, leaves });
    return null;
  };
  return (
    <section aria-label={phrase`Next gate`}>
      <h3>{phrase`Next gate`}</h3>
      <ChoiceField
        label={phrase`Gate`}
        value={soldAs(gate)}
        choices={sold}
        onChoose={(value) => {
          const chosen = sold.find((one) => one.value === value);
          if (chosen === undefined) return;
          const { leaves, opening } = chosen;
          plan(gatePlan(leaves, opening, usualParts(leaves, opening, book)));
        }}
      />
      <div className="pair">
        {gate.leaves.map((leaf, n) => (
          <SizeField
            key={`leaf ${n + 1}`}
            label={
              gate.leaves.length === 1
                ? phrase`Leaf, out to out`
                : phrase`Leaf ${n + 1}, out to out`
            }
            value={leaf.width}
            style={lengths}
            onEnter={(width) => setLeaf(n, width)}
          />
        ))}
      </div>
      <p className="answer">
        <span>{phrase`Opening it will need`}</span>
        <strong>{formatLength(openingOf(gate), fineStyle(lengths))}</strong>
      </p>
      <NextParts gate={gate} onPlan={plan} />
    </section>
  );
};
