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
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly gate: GateLayout;
  readonly id: LeafId;
  readonly leaf: Leaf;
  readonly name: string;
  /** That the hinges are those of a leaf that is told of before; null where they are not. */
  readonly told: string | null;
}

const origins = [
  { value: 'measured', label: phrase`Measured` },
  { value: 'copied', label: phrase`Copied, not measured` },
  { value: 'catalogue', label: phrase`Catalogue, to be made` },
] as const;

const lower = [
  { at: 'middle', label: phrase`Width in the middle` },
  { at: 'bottom', label: phrase`Width at the bottom` },
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
      return phrase`${name}, width: expected more than 0, found ${sizeText(width, lengths)}`;
    }
    const widths = { ...leaf.widths, [at]: width };
    return change(phrase`Measure leaf`, { widths, from: 'measured', on: today() });
  };
};

/** One leaf: its measured width and the hinges it hangs on; unfolded, all that is known of it. */
export const LeafFields = (props: Props) => {
  const { gate, id, leaf, name, told } = props;
  const { lengths } = useSite();
  const measure = useMeasure(props);
  const governs = governingText(leaf.widths, lengths);
  return (
    <fieldset>
      <legend>{name}</legend>
      <SizeField
        label={phrase`Width at the top, out to out`}
        value={leaf.widths.top}
        style={lengths}
        {...(governs !== null && { note: governs })}
        onEnter={(width) => measure('top', width)}
      />
      <PartFields
        label={phrase`Hinges`}
        id={leaf.hinge}
        kinds={['hinge']}
        gate={gate}
        told={told}
        change={phrase`Change hinge`}
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
      <summary>{phrase`${name}: other widths, height, frame`}</summary>
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
          label={phrase`Widths are`}
          value={leaf.from}
          choices={origins}
          onChoose={(from) =>
            make(phrase`Change leaf`, (was) => setGateLeaf(was, gate.id, id, { from }))
          }
        />
        <TextField
          label={phrase`Measured on`}
          value={leaf.on}
          onEnter={(on) => change(phrase`Date leaf`, { on: on.trim() })}
        />
        <MaybeLengthField
          label={phrase`Height out to out`}
          value={leaf.height}
          style={lengths}
          onEnter={(height) =>
            height !== null && !(height > 0)
              ? phrase`Height: expected more than 0 or nothing, found ${sizeText(height, lengths)}`
              : change(phrase`Set leaf height`, { height })
          }
        />
        <FrameField
          frame={leaf.frame}
          onChoose={(frame) =>
            make(phrase`Change frame`, (was) => setGateLeaf(was, gate.id, id, { frame }))
          }
        />
      </div>
    </details>
  );
};
