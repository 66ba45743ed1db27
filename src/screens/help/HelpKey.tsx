import { useEffect, useLayoutEffect } from 'react';
import { createPortal } from 'react-dom';
import { phrase } from '../../phrases/phrase.ts';
import { useBench, useSession } from '../bench.ts';
import { HelpSheet } from './HelpSheet.tsx';
import { belongsTo } from './keys/belongsTo.ts';
import { heardIn } from './keys/keyRow.ts';
import { pressedOf } from './keys/pressedOf.ts';
import { programKeys } from './keys/programKeys.ts';
import { helpKeyId } from './showHelpKey.ts';

/** Whether a key asks for the help, and nothing that has the focus wants it for itself. */
const asks = (event: KeyboardEvent): boolean => {
  const pressed = pressedOf(event);
  if (event.altKey || heardIn(programKeys, pressed)?.deed !== 'help') return false;
  return !belongsTo(event.target, pressed.key, pressed.command);
};

/** Opens the page of keys and gestures, and hears the key that opens it on every screen. */
export const HelpKey = () => {
  const { session } = useBench();
  const help = useSession((state) => state.help);
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (!asks(event)) return;
      event.preventDefault();
      session.setState({ help: 'open' });
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [session]);
  // before the sheet takes the focus
  useLayoutEffect(() => {
    if (help === 'closed') return undefined;
    const had = document.activeElement;
    const giveBack = () => {
      if (document.activeElement === document.body && had instanceof HTMLElement) had.focus();
    };
    return () => void requestAnimationFrame(giveBack);
  }, [help]);
  return (
    <>
      <button
        id={helpKeyId}
        type="button"
        aria-haspopup="dialog"
        aria-keyshortcuts="?"
        onClick={() => session.setState({ help: 'open' })}
      >
        {phrase`Help`}
      </button>
      {help === 'open' &&
        createPortal(
          <HelpSheet onClose={() => session.setState({ help: 'closed' })} />,
          document.body,
        )}
    </>
  );
};
