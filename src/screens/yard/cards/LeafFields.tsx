import { addHardware } from '../../../site/edits/addHardware.ts';
import { setGateLeaf } from '../../../site/edits/setGateLeaf.ts';
import type { Leaf } from '../../../site/gate.ts';
import type { GateId, LeafId } from '../../../site/ids.ts';
import { leafWidth } from '../../../site/leafWidth.ts';
import { oneWidth } from '../../../site/oneWidth.ts';
import { fineStyle } from '../../../units/fineStyle.ts';
import { useSite } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { LengthField } from '../../fields/LengthField.tsx';
import { PartFields } from './PartFields.tsx';
import { smallUnit } from './SpecFields.tsx';
import { useDo, useEdit } from './useEdit.ts';

interface Props {
  readonly gate: GateId;
  readonly id: LeafId;
  readonly leaf: Leaf;
  readonly name: string;
}

const origins = [
  { value: 'measured', label: 'Measured' },
  { value: 'copied', label: 'Copied, not measured' },
  { value: 'catalogue', label: 'Catalogue' },
] as const;

/** One leaf: its measured width and the hinge it hangs on. */
export const LeafFields = ({ gate, id, leaf, name }: Props) => {
  const { lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  return (
    <>
      <div className="pair">
        <LengthField
          label={`${name}, width out to out`}
          value={leafWidth(leaf)}
          style={fineStyle(lengths)}
          bare={smallUnit(lengths.system)}
          onEnter={(width) =>
            edit('Set leaf width', (was) =>
              setGateLeaf(was, gate, id, { widths: oneWidth(width), from: 'measured' }),
            )
          }
        />
        <ChoiceField
          label={`${name}, width from`}
          value={leaf.from}
          choices={origins}
          onChoose={(from) => make('Change leaf', (was) => setGateLeaf(was, gate, id, { from }))}
        />
      </div>
      <PartFields
        label={`${name}, hinges`}
        id={leaf.hinge}
        kinds={['hinge']}
        onChoose={(part) =>
          make('Change hinge', (was) =>
            setGateLeaf(addHardware(was, part.id, part.hardware), gate, id, { hinge: part.id }),
          )
        }
      />
    </>
  );
};
