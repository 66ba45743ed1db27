import { moveMark } from '../../../site/edits/moveMark.ts';
import { renameMark } from '../../../site/edits/renameMark.ts';
import type { MarkId } from '../../../site/ids.ts';
import { inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { LengthField } from '../../fields/LengthField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { useEdit } from './useEdit.ts';

/** A mark: where it is on the ground. */
export const MarkCard = ({ id }: { readonly id: MarkId }) => {
  const site = useSite();
  const edit = useEdit();
  const mark = site.marks[id];
  if (mark === undefined) return null;
  const move = (to: { readonly x?: number; readonly y?: number }) =>
    edit('Move mark', (was) => moveMark(was, id, { x: mark.x, y: mark.y, ...to }));
  return (
    <section aria-label="Mark">
      <TextField
        label="Name"
        value={mark.label}
        onEnter={(text) => edit('Name mark', (was) => renameMark(was, id, text.trim()))}
      />
      <div className="pair">
        <LengthField
          label="East"
          value={inches(mark.x)}
          style={site.lengths}
          onEnter={(x) => move({ x })}
        />
        <LengthField
          label="North"
          value={inches(mark.y)}
          style={site.lengths}
          onEnter={(y) => move({ y })}
        />
      </div>
    </section>
  );
};
