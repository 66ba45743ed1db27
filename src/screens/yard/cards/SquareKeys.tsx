import { squareTurns } from '../../../site/squareTurns.ts';
import { addObservation } from '../../../site/edits/addObservation.ts';
import type { FeatureId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** Says of every corner that looks square and of which nobody has said so that it is. */
export const SquareKeys = ({ id }: { readonly id: FeatureId }) => {
  const turns = squareTurns(useSite(), id);
  const make = useDo();
  if (turns.length === 0) return null;
  return (
    <button
      type="button"
      onClick={() =>
        make(phrase`Square corners`, (was) =>
          turns.reduce(
            (so, turn) => addObservation(so, { kind: 'square', ...turn, trust: null, label: '' }),
            was,
          ),
        )
      }
    >
      {turns.length === 1
        ? phrase`1 corner looks square: say that it is`
        : phrase`${turns.length} corners look square: say that they are`}
    </button>
  );
};
