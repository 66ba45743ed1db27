import type { LevelledPoint } from '../../../engine/ground/levelBook.ts';
import type { LevelRow } from '../../../engine/ground/levelRow.ts';
import { phrase } from '../../../phrases/phrase.ts';
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
    edit(phrase`Change level note`, (was) => changeLevelNote(was, id, fields));
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
    <li className="level-note" aria-label={phrase`Level note ${number}`}>
      <TextField
        label={phrase`Point`}
        value={row.point}
        onEnter={(text) => change({ point: text.trim() })}
      />
      {rod(phrase`BS, backsight`, 'backsight')}
      {rod(phrase`IS, intermediate`, 'intermediate')}
      {rod(phrase`FS, foresight`, 'foresight')}
      <RodField
        label={phrase`Known height`}
        value={row.known}
        style={style}
        onEnter={(known) => change({ known })}
      />
      <RodField
        label={phrase`Distance`}
        value={row.distance === null ? null : inches(row.distance)}
        style={style}
        onEnter={(distance) => change({ distance })}
      />
      <div className="level-foot">
        <p className="level-height">
          {point?.instrument != null && <span>{phrase`HI ${write(point.instrument)}`}</span>}
          <b>
            {point === null ? phrase`Height not known yet` : phrase`Height ${write(point.height)}`}
          </b>
        </p>
        <div className="choices">
          <button
            type="button"
            aria-label={phrase`Add a note after note ${number}`}
            onClick={() => make(phrase`Add level note`, (was) => addLevelNote(was, emptyNote, id))}
          >
            {phrase`Add after`}
          </button>
          <button
            type="button"
            aria-label={phrase`Delete note ${number}`}
            onClick={() => make(phrase`Delete level note`, (was) => removeLevelNotes(was, [id]))}
          >
            {phrase`Delete`}
          </button>
        </div>
      </div>
    </li>
  );
};
