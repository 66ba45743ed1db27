import { squareTurns } from '../../../site/squareTurns.ts';
import { addObservation } from '../../../site/edits/addObservation.ts';
import type { FeatureId } from '../../../site/ids.ts';
import { useSite } from '../../bench.ts';
import { useDo } from './useEdit.ts';

/** Says of every corner that looks square and of which nobody has said so that it is. */
export const SquareKeys = ({ id }: { readonly id: FeatureId }) => {
  const turns = squareTurns(useSite(), id);
  const make = useDo();
  if (turns.length === 0) return null;
  const count = turns.length === 1 ? '1 corner looks' : `${turns.length} corners look`;
  return (
    <button
      type="button"
      onClick={() =>
        make('Square corners', (was) =>
          turns.reduce(
            (so, turn) => addObservation(so, { kind: 'square', ...turn, trust: null, label: '' }),
            was,
          ),
        )
      }
    >
      {count} square: say that {turns.length === 1 ? 'it is' : 'they are'}
    </button>
  );
};
