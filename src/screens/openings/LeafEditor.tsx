import { addHardware } from '../../site/edits/addHardware.ts';
import { setGateLeaf } from '../../site/edits/setGateLeaf.ts';
import type { Leaf } from '../../site/gate.ts';
import type { GateId, LeafId } from '../../site/ids.ts';
import { useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { today } from '../today.ts';
import { useDo, useEdit } from '../yard/cards/useEdit.ts';
import { FrameField } from './FrameField.tsx';
import { MaybeLengthField } from './MaybeLengthField.tsx';
import { PartChoice } from './PartChoice.tsx';

interface Props {
  readonly gate: GateId;
  readonly id: LeafId;
  readonly leaf: Leaf;
  readonly name: string;
}

const origins = [
  { value: 'measured', label: 'Measured' },
  { value: 'copied', label: 'Copied, not measured' },
  { value: 'catalogue', label: 'Catalogue, to be made' },
] as const;

const heights = [
  { at: 'top', label: 'Width at the top' },
  { at: 'middle', label: 'In the middle' },
  { at: 'bottom', label: 'At the bottom' },
] as const;

/** One leaf as it was measured or is to be made: widths, height, frame, and the hinges it hangs on. */
export const LeafEditor = ({ gate, id, leaf, name }: Props) => {
  const { lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  const change = (label: string, fields: Partial<Omit<Leaf, 'order'>>) =>
    edit(label, (was) => setGateLeaf(was, gate, id, fields));
  return (
    <fieldset>
      <legend>{name}</legend>
      <div className="triple">
        {heights.map(({ at, label }) => (
          <MaybeLengthField
            key={at}
            label={label}
            value={leaf.widths[at]}
            style={lengths}
            onEnter={(width) => {
              if (width === null && at === 'top') return `${name}: expected a width at the top`;
              const widths = { ...leaf.widths, [at]: width };
              return change('Measure leaf', { widths, from: 'measured', on: today() });
            }}
          />
        ))}
      </div>
      <div className="pair">
        <ChoiceField
          label="Widths are"
          value={leaf.from}
          choices={origins}
          onChoose={(from) => make('Change leaf', (was) => setGateLeaf(was, gate, id, { from }))}
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
          onEnter={(height) => change('Set leaf height', { height })}
        />
        <FrameField
          frame={leaf.frame}
          onChoose={(frame) => make('Change frame', (was) => setGateLeaf(was, gate, id, { frame }))}
        />
      </div>
      {leaf.hinge !== null && (
        <PartChoice
          label={`Hinges of ${name.toLowerCase()}`}
          id={leaf.hinge}
          kinds={['hinge']}
          gate={gate}
          on={id}
          onChoose={(part) =>
            make('Change hinge', (was) =>
              setGateLeaf(addHardware(was, part.id, part.hardware), gate, id, { hinge: part.id }),
            )
          }
        />
      )}
    </fieldset>
  );
};
