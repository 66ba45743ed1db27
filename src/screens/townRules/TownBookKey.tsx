import { useState } from 'react';
import { TownBook } from './TownBook.tsx';

/** Opens the book of town rules. */
export const TownBookKey = () => {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" onClick={() => setOpen(true)} aria-haspopup="dialog">
        Book of town rules
      </button>
      {open && <TownBook onClose={() => setOpen(false)} />}
    </>
  );
};
