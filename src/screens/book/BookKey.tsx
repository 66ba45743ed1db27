import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { TownBookKey } from '../townRules/TownBookKey.tsx';
import { HardwareBook } from './HardwareBook.tsx';

/** Opens the hardware book, and beside it the book of town rules. */
export const BookKey = () => {
  const [open, setOpen] = useState(false);
  return (
    <div className="choices">
      <button
        type="button"
        onClick={() => setOpen(true)}
        aria-haspopup="dialog"
      >{phrase`Hardware book`}</button>
      <TownBookKey />
      {open && <HardwareBook onClose={() => setOpen(false)} />}
    </div>
  );
};
