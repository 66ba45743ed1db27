import type { ReactNode } from 'react';
import { changeSpec } from '../../../site/edits/changeSpec.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import type { SpecId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { smallUnit } from '../../fields/smallUnit.ts';
import { BarbedFields } from './BarbedFields.tsx';
import { BuildFigures } from './BuildFigures.tsx';
import { FabricFields } from './FabricFields.tsx';
import { PostFields } from './PostFields.tsx';
import { RuleFields } from './RuleFields.tsx';
import { useEdit } from './useEdit.ts';

const lengths = [
  { key: 'fabricHeight', label: 'Fabric height', small: false },
  { key: 'maxBay', label: 'Longest bay', small: false },
  { key: 'wallGap', label: 'Gap at a wall', small: true },
  { key: 'terminalAbove', label: 'Terminal over fabric', small: true },
  { key: 'lineAbove', label: 'Line post over fabric', small: true },
] as const;

const Part = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <details className="more">
    <summary>{title}</summary>
    {children}
  </details>
);

/** How a fence is built; every line of the same build changes with it. */
export const SpecFields = ({ id }: { readonly id: SpecId }) => {
  const site = useSite();
  const edit = useEdit();
  const spec = site.specs[id];
  if (spec === undefined) return null;
  const change = (label: string, fields: Partial<FenceSpec>) =>
    edit(label, (was) => changeSpec(was, id, fields));
  const small = smallUnit(site.lengths.system);
  return (
    <details className="more">
      <summary>Build</summary>
      <div className="pair">
        {lengths.map((field) => (
          <LengthField
            key={field.key}
            label={field.label}
            value={spec[field.key]}
            style={site.lengths}
            {...(field.small && { bare: small })}
            onEnter={(value) =>
              change(`Change ${field.label.toLowerCase()}`, { [field.key]: value })
            }
          />
        ))}
      </div>
      <BuildFigures spec={spec} style={site.lengths} change={change} />
      <Part title="Corners, pull posts, curves, ground">
        <RuleFields spec={spec} style={site.lengths} small={small} change={change} />
      </Part>
      <Part title="Posts and rails">
        <PostFields spec={spec} style={site.lengths} change={change} />
      </Part>
      <Part title="Fabric, steel, holes">
        <FabricFields spec={spec} style={site.lengths} change={change} />
      </Part>
      <Part title="Barbed wire">
        <BarbedFields spec={spec} change={change} />
      </Part>
    </details>
  );
};
