import { useState } from 'react';
import { acceptable, acceptedAs, acceptedText } from '../../engine/acceptedAs.ts';
import type { Flag } from '../../engine/flag.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { Acceptance } from '../../site/acceptance.ts';
import { acceptFlag } from '../../site/edits/acceptFlag.ts';
import { withdrawAcceptance } from '../../site/edits/withdrawAcceptance.ts';
import { useSite } from '../bench.ts';
import { TextField } from '../fields/TextField.tsx';
import { today } from '../today.ts';
import { useDo, useEdit } from './cards/useEdit.ts';

const AcceptForm = ({ flag, onDone }: { readonly flag: Flag; readonly onDone: () => void }) => {
  const edit = useEdit();
  const { acceptances } = useSite();
  const [reason, setReason] = useState('');
  const [by, setBy] = useState(Object.values<Acceptance>(acceptances).at(-1)?.by ?? '');
  const [fault, setFault] = useState<string | null>(null);
  const accept = () => {
    if (reason === '' || by === '') {
      setFault(phrase`Expected a reason and initials of who accepts it`);
      return;
    }
    const said = edit(phrase`Accept flag`, (was) =>
      acceptFlag(was, { ...acceptable(flag), reason, by, day: today() }),
    );
    setFault(said);
    if (said === null) onDone();
  };
  const take = (set: (text: string) => void) => (text: string) => {
    // the line of a fault stays till the key is pressed anew: gone before, it would move the key away
    set(text.trim());
    return null;
  };
  return (
    <div className="stack" role="group" aria-label={phrase`Accept flag`}>
      <TextField label={phrase`Reason`} value={reason} onEnter={take(setReason)} />
      <TextField label={phrase`Initials`} value={by} onEnter={take(setBy)} />
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      <div className="choices">
        <button type="button" className="chief" onClick={accept}>
          {phrase`Accept`}
        </button>
        <button type="button" onClick={onDone}>
          {phrase`Leave it open`}
        </button>
      </div>
    </div>
  );
};

/** How a flag was accepted, or the key to accept it with a reason and initials; nothing for a stop. */
export const AcceptKeys = ({ flag }: { readonly flag: Flag }) => {
  const site = useSite();
  const make = useDo();
  const [open, setOpen] = useState(false);
  if (flag.level === 'stop') return null;
  const accepted = acceptedAs(site, flag);
  if (accepted !== null) {
    const { id, acceptance } = accepted;
    return (
      <div className="side">
        <p className="note">{acceptedText(acceptance)}</p>
        <button
          type="button"
          onClick={() => make(phrase`Withdraw acceptance`, (was) => withdrawAcceptance(was, id))}
        >
          {phrase`Withdraw`}
        </button>
      </div>
    );
  }
  if (open) return <AcceptForm flag={flag} onDone={() => setOpen(false)} />;
  return (
    <button type="button" onClick={() => setOpen(true)}>
      {phrase`Accept with a reason`}
    </button>
  );
};
