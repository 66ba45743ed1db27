import { useState } from 'react';
import { CallsSheet } from './CallsSheet.tsx';

/** Opens what draws a lot from its calls. */
export const CallsKey = () => {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        Lot from a deed or plat
      </button>
      {open && <CallsSheet onClose={() => setOpen(false)} />}
    </>
  );
};
