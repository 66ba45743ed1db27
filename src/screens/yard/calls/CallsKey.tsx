import { useState } from 'react';
import { createPortal } from 'react-dom';
import { phrase } from '../../../phrases/phrase.ts';
import { CallsSheet } from './CallsSheet.tsx';

/** Opens what draws a lot from its calls; the sheet is no part of what the key stands in. */
export const CallsKey = () => {
  const [open, setOpen] = useState(false);
  return (
    <>
      <button type="button" aria-haspopup="dialog" onClick={() => setOpen(true)}>
        {phrase`Lot from a deed or plat`}
      </button>
      {open && createPortal(<CallsSheet onClose={() => setOpen(false)} />, document.body)}
    </>
  );
};
