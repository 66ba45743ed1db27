import { heightZoneLimits } from '../../../trade/heightZoneLimits.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { HeightPlan, Plans } from '../../../store/plans.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { smallUnit } from '../../fields/smallUnit.ts';
import { Published } from './Published.tsx';
import { joined, phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly of: keyof Plans['heights'];
  readonly limits: HeightPlan;
  readonly onEnter: (limits: Partial<HeightPlan>) => string | null;
}

const grounds: Readonly<Record<keyof Plans['heights'], string>> = {
  'sight triangle': phrase`height in a sight triangle`,
  'front yard': phrase`height in a front yard`,
};

type Figure = (typeof heightZoneLimits)[keyof Plans['heights']][number];

/** What is published: what a new one starts with is said apart where a town has the same. */
const figuresOf = (of: keyof Plans['heights']): readonly Figure[] => {
  const [first, ...towns] = heightZoneLimits[of];
  const again = towns.some(({ solid, open }) => solid === first.solid && open === first.open);
  return again ? towns : [first, ...towns];
};

const code = phrase`The local code decides, and says from where the height counts. Fence with slats or a screen counts as solid.`;

const besidesOf = (of: keyof Plans['heights']): string => {
  const [first] = heightZoneLimits[of];
  if (figuresOf(of).includes(first)) return code;
  return joined([phrase`A new one starts at: ${first.source.text}.`, code], ' ');
};

/** How high fence may stand on some ground, with what is published of it. */
export const HeightLimits = ({ of, limits, onEnter }: Props) => {
  const { lengths } = useSite();
  const small = { style: lengths, bare: smallUnit(lengths.system) };
  const write = (length: HeightPlan['solid']) => formatLength(length, fineStyle(lengths));
  return (
    <>
      <div className="pair">
        <LengthField
          {...small}
          label={phrase`Highest, solid fence`}
          value={limits.solid}
          onEnter={(solid) => onEnter({ solid })}
        />
        <LengthField
          {...small}
          label={phrase`Highest, open fence`}
          value={limits.open}
          onEnter={(open) => onEnter({ open })}
        />
      </div>
      <Published
        of={grounds[of]}
        figures={figuresOf(of).map(({ solid, open, source }) => ({
          text: solid === open ? write(solid) : phrase`${write(solid)}, open fence ${write(open)}`,
          source,
          used: limits.solid === solid && limits.open === open,
          onTake: () => void onEnter({ solid, open }),
        }))}
        besides={besidesOf(of)}
      />
    </>
  );
};
