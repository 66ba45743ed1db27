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
import { phrase } from '../../../phrases/phrase.ts';

/** What a size is called, and the edit that changes it, by what a build has between its posts. */
type Called = Readonly<
  Record<FenceSpec['infill']['kind'], { readonly label: string; readonly edit: string }>
>;

const heights: Called = {
  'chain link': { label: phrase`Fabric height`, edit: phrase`Change fabric height` },
  boards: { label: phrase`Height of boards`, edit: phrase`Change height of boards` },
  panels: { label: phrase`Height of panels`, edit: phrase`Change height of panels` },
};

const terminals: Called = {
  'chain link': { label: phrase`Terminal over fabric`, edit: phrase`Change terminal over fabric` },
  boards: { label: phrase`Terminal over boards`, edit: phrase`Change terminal over boards` },
  panels: { label: phrase`Terminal over panels`, edit: phrase`Change terminal over panels` },
};

const linePosts: Called = {
  'chain link': {
    label: phrase`Line post over fabric`,
    edit: phrase`Change line post over fabric`,
  },
  boards: { label: phrase`Line post over boards`, edit: phrase`Change line post over boards` },
  panels: { label: phrase`Line post over panels`, edit: phrase`Change line post over panels` },
};

const longestBay = { label: phrase`Longest bay`, edit: phrase`Change longest bay` };
const wallGap = { label: phrase`Gap at a wall`, edit: phrase`Change gap at a wall` };

/** Sizes of every build, by what they are called; tops of posts are told against what hangs from them. */
const lengthsOf = ({ infill: { kind } }: FenceSpec) =>
  [
    { key: 'fabricHeight', ...heights[kind], small: false },
    { key: 'maxBay', ...longestBay, small: false },
    { key: 'wallGap', ...wallGap, small: true },
    { key: 'terminalAbove', ...terminals[kind], small: true },
    { key: 'lineAbove', ...linePosts[kind], small: true },
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
  const woven = isWoven(spec);
  return (
    <details className="more">
      <summary>{phrase`Build`}</summary>
      <TextField
        label={phrase`Name of the build`}
        value={spec.label}
        onEnter={(text) =>
          text.trim() === ''
            ? phrase`Name of a build: expected what to call it`
            : change(phrase`Name build`, { label: text.trim() })
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
            onEnter={(value) => change(field.edit, { [field.key]: value })}
          />
        ))}
      </div>
      <BuildFigures spec={spec} style={site.lengths} change={change} />
      <Part
        title={
          woven ? phrase`Corners, pull posts, curves, ground` : phrase`Corners, curves, ground`
        }
      >
        <RuleFields spec={spec} style={site.lengths} small={small} change={change} />
      </Part>
      <Part title={woven ? phrase`Posts and rails` : phrase`Posts`}>
        <PostFields spec={spec} style={site.lengths} change={change} />
      </Part>
      <Part title={woven ? phrase`Fabric, steel, holes` : phrase`Steel, holes`}>
        <FabricFields spec={spec} style={site.lengths} change={change} />
      </Part>
      <Part title={phrase`Barbed wire`}>
        <BarbedFields spec={spec} change={change} />
      </Part>
    </details>
  );
};
