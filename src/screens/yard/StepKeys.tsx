import type { Steps } from '../../editor/tool.ts';
import { phrase } from '../../phrases/phrase.ts';
import { useBench } from '../bench.ts';

/** How many points are set of those that are wanted, and the keys that take them back. */
export const StepKeys = ({ steps }: { readonly steps: Steps }) => {
  const { send } = useBench().sender;
  const { set, of, form } = steps;
  return (
    <div className="typed" role="group" aria-label={form}>
      <p className="note" role="status">
        {phrase`${form}: ${set} of ${of} set`}
      </p>
      <div className="typed-row">
        <button type="button" disabled={set === 0} onClick={() => send({ do: 'back' })}>
          {phrase`Take the last back`}
        </button>
        <button type="button" onClick={() => send({ do: 'leave' })}>
          {phrase`Drop them all`}
        </button>
      </div>
    </div>
  );
};
