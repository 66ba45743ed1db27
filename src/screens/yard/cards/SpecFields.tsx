import type { ReactNode } from 'react';
import { isWoven } from '../../../site/isWoven.ts';
import { changeSpec } from '../../../site/edits/changeSpec.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import type { SpecId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { smallUnit } from '../../fields/smallUnit.ts';
import { BarbedFields } from './BarbedFields.tsx';
import { BuildFigures } from './BuildFigures.tsx';
import { FabricFields } from './FabricFields.tsx';
import { InfillFields } from './InfillFields.tsx';
import { PostFields } from './PostFields.tsx';
import { RuleFields } from './RuleFields.tsx';
import { useEdit } from './useEdit.ts';

const heights = {
  'chain link': 'Fabric height',
  boards: 'Height of boards',
  panels: 'Height of panels',
} as const;

const lengths = [
  { key: 'maxBay', label: 'Longest bay', small: false },
  { key: 'wallGap', label: 'Gap at a wall', small: true },
  { key: 'terminalAbove', label: 'Terminal over fabric', small: true },
  { key: 'lineAbove', label: 'Line post over fabric', small: true },
] as const;

/** Sizes of every build, by what they are called; tops of posts are told against what hangs from them. */
const lengthsOf = ({ infill: { kind } }: FenceSpec) => [
  { key: 'fabricHeight', label: heights[kind], small: false } as const,
  ...lengths.map((field) => ({
    ...field,
    label: kind === 'chain link' ? field.label : field.label.replace('fabric', kind),
  })),
];

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
  const woven = isWoven(spec);
  return (
    <details className="more">
      <summary>Build</summary>
      <TextField
        label="Name of the build"
        value={spec.label}
        onEnter={(text) =>
          text.trim() === ''
            ? 'Name of a build: expected what to call it'
            : change('Name build', { label: text.trim() })
        }
      />
      <InfillFields spec={spec} style={site.lengths} small={small} change={change} />
      <div className="pair">
        {lengthsOf(spec).map((field) => (
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
      <Part title={woven ? 'Corners, pull posts, curves, ground' : 'Corners, curves, ground'}>
        <RuleFields spec={spec} style={site.lengths} small={small} change={change} />
      </Part>
      <Part title={woven ? 'Posts and rails' : 'Posts'}>
        <PostFields spec={spec} style={site.lengths} change={change} />
      </Part>
      <Part title={woven ? 'Fabric, steel, holes' : 'Steel, holes'}>
        <FabricFields spec={spec} style={site.lengths} change={change} />
      </Part>
      <Part title="Barbed wire">
        <BarbedFields spec={spec} change={change} />
      </Part>
    </details>
  );
};
