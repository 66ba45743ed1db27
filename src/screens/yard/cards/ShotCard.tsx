import { changeShot } from '../../../site/edits/changeShot.ts';
import { removeShots } from '../../../site/edits/removeShots.ts';
import type { ShotId } from '../../../site/ids.ts';
import type { Shot } from '../../../site/shot.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { Shots } from '../next/Shots.tsx';
import { readHeight } from './readHeight.ts';
import { useDo, useEdit } from './useEdit.ts';

/** A grade shot: how high the ground is there, and where that is. */
export const ShotCard = ({ id }: { readonly id: ShotId }) => {
  const { shots, lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  const shot = shots[id];
  if (shot === undefined) return null;
  const change = (label: string, fields: Partial<Shot>) =>
    edit(label, (was) => changeShot(was, id, fields));
  const move = (fields: Partial<Shot>) => change('Move grade shot', fields);
  return (
    <>
      <section aria-label="Grade shot">
        <TextField
          label="Height"
          value={formatLength(shot.z, lengths)}
          note="Over the datum of this yard; with a minus, below it."
          onEnter={(text) => {
            const height = readHeight(text, lengths.system);
            if (!height.ok) return `Height: ${height.reason}`;
            return change('Change height', { z: height.value });
          }}
        />
        <TextField
          label="Name"
          value={shot.label}
          onEnter={(text) => change('Name grade shot', { label: text.trim() })}
        />
        <div className="pair">
          <LengthField
            label="East"
            value={inches(shot.x)}
            style={lengths}
            onEnter={(x) => move({ x })}
          />
          <LengthField
            label="North"
            value={inches(shot.y)}
            style={lengths}
            onEnter={(y) => move({ y })}
          />
        </div>
        <button
          type="button"
          onClick={() => make('Delete grade shot', (was) => removeShots(was, [id]))}
        >
          Delete grade shot
        </button>
      </section>
      <Shots />
    </>
  );
};
