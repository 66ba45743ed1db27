import { useState } from 'react';
import { changeFeature } from '../../../site/edits/changeFeature.ts';
import { followBoundary } from '../../../site/edits/followBoundary.ts';
import { addSpec } from '../../../site/edits/addSpec.ts';
import type { Feature } from '../../../site/feature.ts';
import type { FeatureId } from '../../../site/ids.ts';
import { nextId } from '../../../site/nextId.ts';
import { inches } from '../../../units/inches.ts';
import { useBench, useSession, useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { smallUnit } from '../../fields/smallUnit.ts';
import { useDo, useEdit } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly id: FeatureId;
  readonly feature: Extract<Feature, { readonly kind: 'boundary' }>;
}

/** Half of a hole of 12 in: what keeps a usual footing on the property. */
const usual = inches(6);

/** What a boundary asks of fence, and a fence drawn along it that goes with it. */
export const BoundaryFields = ({ id, feature }: Props) => {
  const site = useSite();
  const { session } = useBench();
  const edit = useEdit();
  const make = useDo();
  const { spec, id: specId } = useSession(({ plans }) => plans.fence);
  const [inside, setInside] = useState(usual);
  const small = { style: site.lengths, bare: smallUnit(site.lengths.system) };
  const draw = () => {
    const line = nextId(site, 'line');
    make(phrase`Fence along boundary`, (was) =>
      followBoundary(addSpec(was, specId, spec), id, specId, inside),
    );
    session.setState({ tool: 'select', selection: { kind: 'line', id: line } });
  };
  return (
    <>
      <LengthField
        {...small}
        label={phrase`Setback that local rules ask for`}
        value={feature.setback}
        onEnter={(setback) =>
          edit(phrase`Change setback`, (was) => changeFeature(was, id, { setback }))
        }
      />
      <div className="pair">
        <LengthField
          {...small}
          label={feature.closed ? phrase`Fence so far inside` : phrase`Fence so far to the left`}
          value={inside}
          onEnter={(length) => {
            setInside(length);
            return null;
          }}
        />
        <button type="button" onClick={draw}>
          {phrase`Draw fence along it`}
        </button>
      </div>
    </>
  );
};
