import type { GateLayout } from '../../../engine/layout.ts';
import { setGateLeaf } from '../../../site/edits/setGateLeaf.ts';
import type { Leaf } from '../../../site/gate.ts';
import type { LeafId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { SizeField } from '../../fields/SizeField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { FrameField } from '../../openings/FrameField.tsx';
import { MaybeLengthField } from '../../fields/MaybeLengthField.tsx';
import { sizeText } from '../../fields/sizeText.ts';
import { today } from '../../today.ts';
import { governingText } from './governingText.ts';
import { PartFields } from './PartFields.tsx';
import { useDo, useEdit } from './useEdit.ts';

interface Props {
  readonly gate: GateLayout;
  readonly id: LeafId;
  readonly leaf: Leaf;
  readonly name: string;
  /** The leaf that hangs on the same hinges and is told of before; null where there is none. */
  readonly alike: string | null;
}

const origins = [
  { value: 'measured', label: 'Measured' },
  { value: 'copied', label: 'Copied, not measured' },
  { value: 'catalogue', label: 'Catalogue, to be made' },
] as const;

const lower = [
  { at: 'middle', label: 'Width in the middle' },
  { at: 'bottom', label: 'Width at the bottom' },
] as const;

/** Sets fields of a leaf: null when made, else the one line for the field. */
const useLeafEdit = ({ gate, id }: Props) => {
  const edit = useEdit();
  return (label: string, fields: Partial<Omit<Leaf, 'order'>>): string | null =>
    edit(label, (was) => setGateLeaf(was, gate.id, id, fields));
};

const useMeasure = (props: Props) => {
  const change = useLeafEdit(props);
  const { lengths } = useSite();
  const { leaf, name } = props;
  return (at: keyof Leaf['widths'], width: Leaf['widths']['middle']): string | null => {
    if (width !== null && !(width > 0)) {
      return `${name}, width: expected more than 0, found ${sizeText(width, lengths)}`;
    }
    const widths = { ...leaf.widths, [at]: width };
    return change('Measure leaf', { widths, from: 'measured', on: today() });
  };
};

/** One leaf: its measured width and the hinges it hangs on; unfolded, all that is known of it. */
export const LeafFields = (props: Props) => {
  const { gate, id, leaf, name, alike } = props;
  const { lengths } = useSite();
  const measure = useMeasure(props);
  const governs = governingText(leaf.widths, lengths);
  return (
    <fieldset>
      <legend>{name}</legend>
      <SizeField
        label="Width at the top, out to out"
        value={leaf.widths.top}
        style={lengths}
        {...(governs !== null && { note: governs })}
        onEnter={(width) => measure('top', width)}
      />
      <PartFields
        label="Hinges"
        id={leaf.hinge}
        kinds={['hinge']}
        gate={gate}
        told={alike}
        change="Change hinge"
        put={(was, hinge) => setGateLeaf(was, gate.id, id, { hinge })}
      />
      <More {...props} />
    </fieldset>
  );
};

const More = (props: Props) => {
  const { gate, id, leaf, name } = props;
  const { lengths } = useSite();
  const make = useDo();
  const change = useLeafEdit(props);
  const measure = useMeasure(props);
  return (
    <details className="more">
      <summary>{name}: other widths, height, frame</summary>
      <div className="pair">
        {lower.map(({ at, label }) => (
          <MaybeLengthField
            key={at}
            label={label}
            value={leaf.widths[at]}
            style={lengths}
            onEnter={(width) => measure(at, width)}
          />
        ))}
        <ChoiceField
          label="Widths are"
          value={leaf.from}
          choices={origins}
          onChoose={(from) => make('Change leaf', (was) => setGateLeaf(was, gate.id, id, { from }))}
        />
        <TextField
          label="Measured on"
          value={leaf.on}
          onEnter={(on) => change('Date leaf', { on: on.trim() })}
        />
        <MaybeLengthField
          label="Height out to out"
          value={leaf.height}
          style={lengths}
          onEnter={(height) =>
            height !== null && !(height > 0)
              ? `Height: expected more than 0 or nothing, found ${sizeText(height, lengths)}`
              : change('Set leaf height', { height })
          }
        />
        <FrameField
          frame={leaf.frame}
          onChoose={(frame) =>
            make('Change frame', (was) => setGateLeaf(was, gate.id, id, { frame }))
          }
        />
      </div>
    </details>
  );
};
