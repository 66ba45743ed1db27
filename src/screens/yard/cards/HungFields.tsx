import type { GateLayout } from '../../../engine/layout.ts';
import { leavesOf } from '../../../engine/gate/termsOf.ts';
import { setGateLatch } from '../../../site/edits/setGateLatch.ts';
import type { Gate } from '../../../site/gate.ts';
import { GatePostField } from './GatePostField.tsx';
import { LeafFields } from './LeafFields.tsx';
import { PartFields } from './PartFields.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly gate: Gate;
  readonly laid: GateLayout;
}

/** What hangs in an opening: every leaf with its hinges, and the latch or drop rod. */
export const HungFields = ({ gate, laid }: Props) => {
  const leaves = leavesOf(gate);
  const single = leaves.length === 1;
  return (
    <>
      {leaves.map(({ id, ...leaf }, n) => (
        <LeafFields
          key={id}
          gate={laid}
          id={id}
          leaf={leaf}
          name={single ? phrase`Leaf` : phrase`Leaf ${n + 1}`}
          told={
            n > 0 && leaves[0]?.hinge === leaf.hinge ? phrase`The same part as of leaf ${1}` : null
          }
        />
      ))}
      <PartFields
        label={single ? phrase`Latch` : phrase`Drop rod or latch`}
        id={gate.latch}
        kinds={['latch', 'drop rod']}
        gate={laid}
        change={phrase`Change latch`}
        put={(was, latch) => setGateLatch(was, laid.id, latch)}
      />
      <GatePostField gate={gate} laid={laid} />
    </>
  );
};
