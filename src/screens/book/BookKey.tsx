import { useState } from 'react';
import { HardwareBook } from './HardwareBook.tsx';

/** Opens the hardware book. */
export const BookKey = () => {
  const [open, setOpen] = useState(false);
  return (
    <div className="choices">
      <button type="button" onClick={() => setOpen(true)} aria-haspopup="dialog">
        Hardware book
      </button>
      {open && <HardwareBook onClose={() => setOpen(false)} />}
    </div>
  );
};
