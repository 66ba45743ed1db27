import { phrase } from '../../phrases/phrase.ts';
import { redoLabel, undoLabel } from '../../store/onPad.ts';
import { useBench } from '../bench.ts';
import { useStored } from '../useStored.ts';

/** Undo and redo, each with the label of the edit that it takes back or does again. */
export const UndoKeys = () => {
  const { site } = useBench();
  const back = useStored(site, ({ pad }) => undoLabel(pad));
  const again = useStored(site, ({ pad }) => redoLabel(pad));
  const { undo, redo } = site.getState();
  return (
    <>
      <button type="button" disabled={back === null} onClick={undo} title={back ?? undefined}>
        {phrase`Undo`}
        {back !== null && <small>{back}</small>}
      </button>
      <button type="button" disabled={again === null} onClick={redo} title={again ?? undefined}>
        {phrase`Redo`}
        {again !== null && <small>{again}</small>}
      </button>
    </>
  );
};
