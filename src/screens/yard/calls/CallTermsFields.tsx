import { phrase } from '../../../phrases/phrase.ts';
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
  { value: 'feet', label: phrase`Feet` },
  { value: 'metres', label: phrase`Metres` },
  { value: 'chains', label: phrase`Chains (66 ft)` },
  { value: 'rods', label: phrase`Rods, perches or poles (16 1/2 ft)` },
];

const unitWords: Readonly<Record<Unit, string>> = {
  miles: phrase`miles`,
  furlongs: phrase`furlongs`,
  varas: phrase`varas`,
  'survey feet': phrase`survey feet`,
  yards: phrase`yards`,
  metres: phrase`metres`,
  chains: phrase`chains`,
  rods: phrase`rods`,
  feet: phrase`feet`,
  links: phrase`links`,
  inches: phrase`inches`,
};

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
        {phrase`Bare distances in ${unitWords[unit]}, to close to 1 in ${formatCount(parts)}`}
      </summary>
      <div className="stack">
        <div className="pair">
          <ChoiceField
            label={phrase`A distance without a unit is in`}
            value={unit}
            choices={units}
            onChoose={(value) => set({ unit: value })}
          />
          <TextField
            label={phrase`Has to close to 1 in`}
            keys="decimal"
            value={formatCount(parts)}
            onEnter={(text) => {
              const read = parseParts(text);
              if (!read.ok) return phrase`Has to close to 1 in: ${read.reason}`;
              set({ parts: read.value });
              return null;
            }}
          />
        </div>
        <Published
          of={phrase`closure`}
          figures={callClosings.map((row) => ({
            text: phrase`1 in ${formatCount(row.parts)}, ${row.name}`,
            source: row.source,
            used: parts === row.parts,
            onTake: () => set({ parts: row.parts }),
          }))}
        />
      </div>
    </details>
  );
};
