import type { AsSet } from '../../../site/asSet.ts';
import type { LeafId } from '../../../site/ids.ts';
import type { Inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { FoundField } from './FoundField.tsx';
import type { Recorder } from './useAsSet.ts';
import { withLeaf, type Found } from './withLeaf.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly id: LeafId;
  readonly name: string;
  readonly hinged: boolean;
  readonly asSet: AsSet;
  readonly onRecord: Recorder;
}

/** One leaf and its hinges as they were measured again beside the posts; empty: as planned. */
export const LeafFound = ({ id, name, hinged, asSet, onRecord }: Props) => {
  const { lengths } = useSite();
  const widths = asSet.leaves[id];
  const fields: readonly (readonly [Found, string, Inches | null])[] = [
    ['top', phrase`${name} at the top`, widths?.top ?? null],
    ['bottom', phrase`${name} at the bottom`, widths?.bottom ?? null],
    ...(hinged
      ? [['hinges', phrase`${name}: hinges take`, asSet.hinges[id] ?? null] as const]
      : []),
  ];
  const entered = (what: Found, label: string, size: Inches | null): string | null => {
    const next = withLeaf(asSet, id, [what, size]);
    if (typeof next !== 'string') {
      const said =
        what === 'hinges' ? phrase`Measure hinges on site` : phrase`Measure leaf on site`;
      return onRecord(said, next);
    }
    if (size === null) return `${label}: ${next}`;
    return phrase`${label}: ${next}, found ${sizeText(size, lengths)}`;
  };
  return (
    <div className="pair">
      {fields.map(([what, label, value]) => (
        <FoundField
          key={what}
          label={label}
          value={value}
          {...(what === 'hinges' && { note: phrase`From the face of the post to the frame` })}
          onEnter={(size) => entered(what, label, size)}
        />
      ))}
    </div>
  );
};
