import { callClosings } from '../../../trade/callClosings.ts';
import { formatCount } from '../../../units/formatArea.ts';
import type { LandUnit } from '../../../units/landUnits.ts';
import { useBench, useSession } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { Published } from '../cards/Published.tsx';
import { parseParts } from '../../../units/parseParts.ts';
import { useCallUnit } from './useCalls.ts';

type Unit = LandUnit['name'];

const units: readonly { readonly value: Unit; readonly label: string }[] = [
  { value: 'feet', label: 'Feet' },
  { value: 'metres', label: 'Metres' },
  { value: 'chains', label: 'Chains (66 ft)' },
  { value: 'rods', label: 'Rods, perches or poles (16 1/2 ft)' },
];

/** What a bare distance is in, and how well the calls have to close. */
export const CallTermsFields = () => {
  const { session } = useBench();
  const { parts } = useSession(({ calls }) => calls);
  const unit = useCallUnit();
  const set = (change: { readonly unit: Unit } | { readonly parts: number }) =>
    session.setState(({ calls }) => ({ calls: { ...calls, ...change } }));
  return (
    <details className="more">
      <summary>
        Bare distances in {unit}, to close to 1 in {formatCount(parts)}
      </summary>
      <div className="stack">
        <div className="pair">
          <ChoiceField
            label="A distance without a unit is in"
            value={unit}
            choices={units}
            onChoose={(value) => set({ unit: value })}
          />
          <TextField
            label="Has to close to 1 in"
            keys="decimal"
            value={formatCount(parts)}
            onEnter={(text) => {
              const read = parseParts(text);
              if (!read.ok) return `Has to close to 1 in: ${read.reason}`;
              set({ parts: read.value });
              return null;
            }}
          />
        </div>
        <Published
          of="closure"
          figures={callClosings.map((row) => ({
            text: `1 in ${formatCount(row.parts)}, ${row.name}`,
            source: row.source,
            used: parts === row.parts,
            onTake: () => set({ parts: row.parts }),
          }))}
        />
      </div>
    </details>
  );
};
