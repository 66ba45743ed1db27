import { useEffect, useRef } from 'react';
import { levelsOf } from '../../../engine/ground/levelsOf.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { addLevelNote } from '../../../site/edits/addLevelNote.ts';
import { setLevelAllowable } from '../../../site/edits/setLevelAllowable.ts';
import { closingOver, levelClosings } from '../../../trade/levelClosing.ts';
import { formatLength } from '../../../units/formatLength.ts';
import { sum } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { useSite } from '../../bench.ts';
import { SheetOver } from '../../frame/SheetOver.tsx';
import { UndoKeys } from '../../frame/UndoKeys.tsx';
import { Published } from '../cards/Published.tsx';
import { useDo, useEdit } from '../cards/useEdit.ts';
import { benchmarkNote, emptyNote } from './emptyNote.ts';
import './levels.css';
import { LevelResults } from './LevelResults.tsx';
import { NoteRow } from './NoteRow.tsx';
import { RodField } from './RodField.tsx';
import { rodStyle } from './rodStyle.ts';

/** How far the run may close off, with what is published for its length. */
const Allowable = ({ style }: { readonly style: LengthStyle }) => {
  const { levels } = useSite();
  const edit = useEdit();
  const lengths = Object.values(levels.notes).flatMap(({ distance }) => distance ?? []);
  const length = sum(lengths);
  const set = (allowable: typeof levels.allowable) =>
    edit(phrase`Change allowed misclosure`, (was) => setLevelAllowable(was, allowable));
  return (
    <>
      <RodField
        label={phrase`Allowed misclosure`}
        value={levels.allowable}
        style={style}
        onEnter={(value) => set(value)}
      />
      {length > 0 && (
        <Published
          of={phrase`misclosure`}
          figures={levelClosings.map((rule) => {
            const allowed = closingOver(rule, length);
            return {
              text: `${formatLength(allowed, style)}, ${rule.name}`,
              source: rule.source,
              used: levels.allowable === allowed,
              onTake: () => void set(allowed),
            };
          })}
        />
      )}
    </>
  );
};

/** The level notes of the yard, as they are read off the rod. */
export const LevelNotes = ({ onClose }: { readonly onClose: () => void }) => {
  const site = useSite();
  const make = useDo();
  const style = rodStyle(site.lengths);
  const { rows, book } = levelsOf(site);
  const list = useRef<HTMLOListElement>(null);
  const added = useRef(false);
  const add = () => {
    added.current = true;
    make(phrase`Add level note`, (was) =>
      addLevelNote(was, rows.length === 0 ? benchmarkNote : emptyNote),
    );
  };
  useEffect(() => {
    if (!added.current) return;
    added.current = false;
    // one writes on in the note that was added
    list.current?.querySelector<HTMLInputElement>('li:last-child input')?.focus();
  });
  return (
    <SheetOver title={phrase`Level notes`} onClose={onClose}>
      <div className="stack levels">
        <div className="choices">
          <UndoKeys />
        </div>
        <p className="note">
          {phrase`Read the rod on a point of known height first (backsight), then on every point of the ground (intermediate); before the level moves, on a turning point (foresight), and on that again after (backsight). End with a foresight on the benchmark: it shows the error.`}
        </p>
        <ol ref={list} className="plain level-notes">
          {rows.map((row, n) => (
            <NoteRow
              key={row.id}
              row={row}
              number={n + 1}
              point={book.ok ? (book.value.points[n] ?? null) : null}
              style={style}
            />
          ))}
        </ol>
        <div className="choices">
          <button type="button" className={rows.length === 0 ? 'chief' : ''} onClick={add}>
            {rows.length === 0 ? phrase`Start at a benchmark` : phrase`Add a note`}
          </button>
        </div>
        {rows.length > 0 && !book.ok && (
          <p className="fault" role="alert">
            {book.reason}
          </p>
        )}
        {rows.length > 0 && <Allowable style={style} />}
        {book.ok && <LevelResults book={book.value} style={style} onClose={onClose} />}
      </div>
    </SheetOver>
  );
};
