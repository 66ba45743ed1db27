import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { TownBook } from './TownBook.tsx';

/** Opens the book of town rules. */
export const TownBookKey = () => {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button
        type="button"
        onClick={() => setOpen(true)}
        aria-haspopup="dialog"
      >{phrase`Book of town rules`}</button>
      {open && <TownBook onClose={() => setOpen(false)} />}
    </>
  );
};
