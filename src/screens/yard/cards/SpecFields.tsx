import { changeSpec } from '../../../site/edits/changeSpec.ts';
import type { FenceSpec } from '../../../site/fenceSpec.ts';
import type { SpecId } from '../../../site/ids.ts';
import { formatAngle } from '../../../units/formatAngle.ts';
import { formatLength } from '../../../units/formatLength.ts';
import type { LengthSystem } from '../../../units/lengthStyle.ts';
import { parseAngle } from '../../../units/parseAngle.ts';
import { quotedText } from '../../../units/quotedText.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { useEdit } from './useEdit.ts';

/** The unit of a bare number in small sizes: nobody means feet when he types 2 for a gap. */
export const smallUnit = (system: LengthSystem): LengthSystem =>
  system === 'mm' || system === 'm' ? 'mm' : 'inches';

const lengths = [
  { key: 'fabricHeight', label: 'Fabric height', small: false },
  { key: 'maxBay', label: 'Longest bay', small: false },
  { key: 'wallGap', label: 'Gap at a wall', small: true },
  { key: 'terminalAbove', label: 'Terminal over fabric', small: true },
  { key: 'lineAbove', label: 'Line post over fabric', small: true },
] as const;

const posts = [
  { key: 'linePost', label: 'Line posts' },
  { key: 'terminalPost', label: 'Terminal posts' },
  { key: 'gatePost', label: 'Gate posts' },
] as const;

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
        <TextField
          label="Corner from a turn of"
          keys="decimal"
          value={formatAngle(spec.cornerAngle)}
          onEnter={(text) => {
            const angle = parseAngle(text);
            if (!angle.ok) return angle.reason;
            if (angle.value < 0 || angle.value > Math.PI) {
              return `${quotedText(text)} is no turn: expected degrees from 0 to 180`;
            }
            return change('Change corner angle', { cornerAngle: angle.value });
          }}
        />
      </div>
      <ul className="plain">
        {posts.map(({ key, label }) => (
          <li key={key}>
            {label}: {spec[key].label},{' '}
            {formatLength(spec[key].od, { system: 'inches', fraction: 32 })} OD
          </li>
        ))}
      </ul>
    </details>
  );
};
