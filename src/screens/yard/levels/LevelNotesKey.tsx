import { useState } from 'react';
import { phrase } from '../../../phrases/phrase.ts';
import { useSite } from '../../bench.ts';
import { LevelNotes } from './LevelNotes.tsx';

/** Opens the level notes of the yard. */
export const LevelNotesKey = () => {
  const count = Object.keys(useSite().levels.notes).length;
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" onClick={() => setOpen(true)} aria-haspopup="dialog">
        {count === 0 ? phrase`Level notes` : phrase`Level notes: ${count}`}
      </button>
      {open && <LevelNotes onClose={() => setOpen(false)} />}
    </>
  );
};
