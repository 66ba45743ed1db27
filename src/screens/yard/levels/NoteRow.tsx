import type { LevelledPoint } from '../../../engine/ground/levelBook.ts';
import type { LevelRow } from '../../../engine/ground/levelRow.ts';
import { addLevelNote, type LevelReadings } from '../../../site/edits/addLevelNote.ts';
import { changeLevelNote } from '../../../site/edits/changeLevelNote.ts';
import { removeLevelNotes } from '../../../site/edits/removeLevelNotes.ts';
import type { LevelId } from '../../../site/ids.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { TextField } from '../../fields/TextField.tsx';
import { useDo, useEdit } from '../cards/useEdit.ts';
import { emptyNote } from './emptyNote.ts';
import { RodField } from './RodField.tsx';

interface Props {
  readonly row: LevelRow & { readonly id: LevelId };
  /** Counted from 1. */
  readonly number: number;
  /** Null while the notes cannot be worked out. */
  readonly point: LevelledPoint | null;
  readonly style: LengthStyle;
}

/** One line of level notes, with what follows from it. */
export const NoteRow = ({ row, number, point, style }: Props) => {
  const edit = useEdit();
  const make = useDo();
  const { id } = row;
  const change = (fields: Partial<LevelReadings>) =>
    edit('Change level note', (was) => changeLevelNote(was, id, fields));
  const write = (length: LevelledPoint['instrument']) =>
    length === null ? '' : formatLength(length, style);
  const rod = (label: string, key: 'backsight' | 'intermediate' | 'foresight') => (
    <RodField
      label={label}
      value={row[key]}
      style={style}
      onEnter={(value) => change({ [key]: value })}
    />
  );
  return (
    <li className="level-note" aria-label={`Level note ${number}`}>
      <TextField
        label="Point"
        value={row.point}
        onEnter={(text) => change({ point: text.trim() })}
      />
      {rod('BS, backsight', 'backsight')}
      {rod('IS, intermediate', 'intermediate')}
      {rod('FS, foresight', 'foresight')}
      <RodField
        label="Known height"
        value={row.known}
        style={style}
        onEnter={(known) => change({ known })}
      />
      <RodField
        label="Distance"
        value={row.distance === null ? null : inches(row.distance)}
        style={style}
        onEnter={(distance) => change({ distance })}
      />
      <div className="level-foot">
        <p className="level-height">
          {point?.instrument != null && <span>HI {write(point.instrument)}</span>}
          <b>{point === null ? 'Height not known yet' : `Height ${write(point.height)}`}</b>
        </p>
        <div className="choices">
          <button
            type="button"
            aria-label={`Add a note after note ${number}`}
            onClick={() => make('Add level note', (was) => addLevelNote(was, emptyNote, id))}
          >
            Add after
          </button>
          <button
            type="button"
            aria-label={`Delete note ${number}`}
            onClick={() => make('Delete level note', (was) => removeLevelNotes(was, [id]))}
          >
            Delete
          </button>
        </div>
      </div>
    </li>
  );
};
