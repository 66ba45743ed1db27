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
import { phrase } from '../../../phrases/phrase.ts';

/** A grade shot: how high the ground is there, and where that is. */
export const ShotCard = ({ id }: { readonly id: ShotId }) => {
  const { shots, lengths } = useSite();
  const edit = useEdit();
  const make = useDo();
  const shot = shots[id];
  if (shot === undefined) return null;
  const change = (label: string, fields: Partial<Shot>) =>
    edit(label, (was) => changeShot(was, id, fields));
  const move = (fields: Partial<Shot>) => change(phrase`Move grade shot`, fields);
  return (
    <>
      <section aria-label={phrase`Grade shot`}>
        <TextField
          label={phrase`Height`}
          value={formatLength(shot.z, lengths)}
          note={phrase`Over the datum of this yard; with a minus, below it.`}
          onEnter={(text) => {
            const height = readHeight(text, lengths.system);
            if (!height.ok) return phrase`Height: ${height.reason}`;
            return change(phrase`Change height`, { z: height.value });
          }}
        />
        <TextField
          label={phrase`Name`}
          value={shot.label}
          onEnter={(text) => change(phrase`Name grade shot`, { label: text.trim() })}
        />
        <div className="pair">
          <LengthField
            label={phrase`East`}
            value={inches(shot.x)}
            style={lengths}
            onEnter={(x) => move({ x })}
          />
          <LengthField
            label={phrase`North`}
            value={inches(shot.y)}
            style={lengths}
            onEnter={(y) => move({ y })}
          />
        </div>
        <button
          type="button"
          onClick={() => make(phrase`Delete grade shot`, (was) => removeShots(was, [id]))}
        >
          {phrase`Delete grade shot`}
        </button>
      </section>
      <Shots />
    </>
  );
};
