import { phrase } from '../../../phrases/phrase.ts';
import { boundaryCaution } from '../../../trade/cautions.ts';
import { SheetOver } from '../../frame/SheetOver.tsx';
import { useSession } from '../../bench.ts';
import './calls.css';
import { CallsResults } from './CallsResults.tsx';
import { CallsText } from './CallsText.tsx';
import { CallTermsFields } from './CallTermsFields.tsx';
import { LotKeys } from './LotKeys.tsx';
import { useCalls } from './useCalls.ts';

const Results = ({ onClose }: { readonly onClose: () => void }) => {
  const found = useCalls();
  if (!found.ok) {
    return (
      <p className="fault" role="alert">
        {found.reason}
      </p>
    );
  }
  return (
    <>
      <CallsResults {...found.value} />
      <LotKeys {...found.value} onClose={onClose} />
    </>
  );
};

/** Calls of a deed or plat, as they are pasted or typed: read at once, then drawn as a lot. */
export const CallsSheet = ({ onClose }: { readonly onClose: () => void }) => {
  const empty = useSession(({ calls }) => calls.text.trim() === '');
  return (
    <SheetOver title={phrase`Lot from a deed or plat`} onClose={onClose}>
      <div className="stack calls">
        <p className="note caution-of-calls">{boundaryCaution.text}</p>
        <CallsText />
        <CallTermsFields />
        {!empty && <Results onClose={onClose} />}
      </div>
    </SheetOver>
  );
};
