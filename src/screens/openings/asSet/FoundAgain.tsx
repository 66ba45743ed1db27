import { useState } from 'react';
import { leavesOf } from '../../../engine/gate/termsOf.ts';
import type { AsSet } from '../../../site/asSet.ts';
import type { Gate } from '../../../site/gate.ts';
import { LeafFound } from './LeafFound.tsx';
import type { Recorder } from './useAsSet.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly drawn: Gate;
  readonly asSet: AsSet;
  readonly onRecord: Recorder;
}

/** Leaves and hinges that were measured again on site, folded away until one was. */
export const FoundAgain = ({ drawn, asSet, onRecord }: Props) => {
  const leaves = leavesOf(drawn);
  const [open, setOpen] = useState(
    () => Object.keys({ ...asSet.leaves, ...asSet.hinges }).length > 0,
  );
  if (leaves.length === 0) return null;
  return (
    <details className="more" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {leaves.every(({ hinge }) => hinge === null)
          ? phrase`Leaves measured again`
          : phrase`Leaves and hinges measured again`}
      </summary>
      <div className="again">
        {leaves.map(({ id, hinge }, n) => (
          <LeafFound
            key={id}
            id={id}
            name={leaves.length === 1 ? phrase`Leaf` : phrase`Leaf ${n + 1}`}
            hinged={hinge !== null}
            asSet={asSet}
            onRecord={onRecord}
          />
        ))}
      </div>
    </details>
  );
};
