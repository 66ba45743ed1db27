import type { Feature, FeatureChange } from '../../../site/feature.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { HeightLimits } from './HeightLimits.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly feature: Extract<Feature, { readonly kind: 'height zone' }>;
  readonly change: (fields: FeatureChange) => string | null;
}

const kinds = [
  { value: 'sight triangle', label: phrase`Sight triangle` },
  { value: 'front yard', label: phrase`Front yard` },
] as const;

/** What ground with a height limit is, and its limits. */
export const HeightZoneFields = ({ feature, change }: Props) => (
  <>
    <ChoiceField
      label={phrase`Limit of a`}
      value={feature.of}
      choices={kinds}
      onChoose={(of) => void change({ of })}
    />
    <HeightLimits of={feature.of} limits={feature} onEnter={change} />
  </>
);
