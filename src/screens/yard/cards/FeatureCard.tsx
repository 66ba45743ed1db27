import { changeFeature } from '../../../site/edits/changeFeature.ts';
import { removeFeature } from '../../../site/edits/removeFeature.ts';
import type { Feature } from '../../../site/feature.ts';
import type { FeatureId } from '../../../site/ids.ts';
import { overheadClearance } from '../../../trade/overheadLines.ts';
import { toleranceZones } from '../../../trade/toleranceZones.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { BoundaryFields } from './BoundaryFields.tsx';
import { featureName } from '../../../site/featureName.ts';
import { featureNoun } from '../../../site/featureNoun.ts';
import { HeightZoneFields } from './HeightZoneFields.tsx';
import { Published } from './Published.tsx';
import { services, utilityRuns } from './services.ts';
import { SideFields } from './SideFields.tsx';
import { smallUnit } from '../../fields/smallUnit.ts';
import { SquareKeys } from './SquareKeys.tsx';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

type Change = Parameters<typeof changeFeature>[2];

interface Sizes {
  readonly feature: Feature;
  readonly change: (fields: Change) => string | null;
}

const SizeFields = ({ feature, change }: Sizes) => {
  const { lengths } = useSite();
  const small = { style: lengths, bare: smallUnit(lengths.system) };
  if (feature.kind === 'utility') {
    return (
      <>
        <ChoiceField
          label={phrase`Service`}
          value={feature.service}
          choices={services}
          onChoose={(service) => void change({ service })}
        />
        <ChoiceField
          label={phrase`Runs`}
          value={feature.run}
          choices={utilityRuns}
          onChoose={(run) => void change({ run })}
        />
        <div className="pair">
          <LengthField
            {...small}
            label={phrase`Width`}
            value={feature.width}
            onEnter={(width) => change({ width })}
          />
          {feature.run === 'buried' && (
            <LengthField
              {...small}
              label={phrase`Tolerance, each side`}
              value={feature.tolerance}
              onEnter={(tolerance) => change({ tolerance })}
            />
          )}
        </div>
        {feature.run === 'overhead' ? (
          <p className="note">{overheadClearance.source.text}.</p>
        ) : (
          <Published
            of={phrase`tolerance`}
            figures={toleranceZones.map(({ length, source }) => ({
              text: formatLength(length, lengths),
              source,
              used: feature.tolerance === length,
              onTake: () => void change({ tolerance: length }),
            }))}
            besides={phrase`The one call center of the place decides. Within the tolerance dig by hand only.`}
          />
        )}
      </>
    );
  }
  if (feature.kind === 'tree') {
    return (
      <div className="pair">
        <LengthField
          {...small}
          label={phrase`Trunk, radius`}
          value={feature.trunk}
          onEnter={(trunk) => change({ trunk })}
        />
        <LengthField
          label={phrase`Roots, radius`}
          style={lengths}
          value={feature.roots}
          onEnter={(roots) => change({ roots })}
        />
      </div>
    );
  }
  if (feature.kind !== 'note') return null;
  return (
    <TextField
      label={phrase`Text`}
      lines={4}
      value={feature.text}
      onEnter={(text) => change({ text })}
    />
  );
};

/** Something on the ground that is not fence: its name and its sizes. */
export const FeatureCard = ({ id }: { readonly id: FeatureId }) => {
  const edit = useEdit();
  const make = useDo();
  const feature = useSite().features[id];
  if (feature === undefined) return null;
  const noun = featureNoun(feature);
  const change = (fields: Change) =>
    edit(phrase`Change ${noun}`, (was) => changeFeature(was, id, fields));
  return (
    <section aria-label={featureName(feature)}>
      <TextField
        label={phrase`Name`}
        value={feature.label}
        onEnter={(text) => change({ label: text.trim() })}
      />
      <SizeFields feature={feature} change={change} />
      {feature.kind === 'height zone' && <HeightZoneFields feature={feature} change={change} />}
      {feature.kind === 'boundary' && <BoundaryFields id={id} feature={feature} />}
      {'path' in feature && <SideFields id={id} />}
      {'path' in feature && <SquareKeys id={id} />}
      <button
        type="button"
        onClick={() => make(phrase`Delete ${noun}`, (was) => removeFeature(was, id))}
      >
        {phrase`Delete ${noun}`}
      </button>
    </section>
  );
};
