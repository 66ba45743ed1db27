import type { GateLayout } from '../../../engine/layout.ts';
import { setGateHinged } from '../../../site/edits/setGateHinged.ts';
import { setGateLeaves } from '../../../site/edits/setGateLeaves.ts';
import { setGateOpens } from '../../../site/edits/setGateOpens.ts';
import type { Gate } from '../../../site/gate.ts';
import { leafCounts, type GateWay } from '../../../site/gateWay.ts';
import { useBook } from '../../bench.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { closedBy, wayToBegin } from '../../plans/closedBy.ts';
import { useMayOpen } from '../../openings/useMayOpen.ts';
import { SlideProposal } from './SlideProposal.tsx';
import { useDo } from './useEdit.ts';
import { WaySizes } from './WaySizes.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly gate: Gate;
  readonly laid: GateLayout;
}

const ways: readonly { readonly value: GateWay['kind']; readonly label: string }[] = [
  { value: 'swing', label: phrase`Swings on hinges` },
  { value: 'centre stop', label: phrase`Swings to a centre stop` },
  { value: 'cantilever', label: phrase`Rolls aside, cantilever` },
  { value: 'gap', label: phrase`Not at all: a gap` },
];

const counts = [
  { value: '1', label: phrase`Single` },
  { value: '2', label: phrase`Double` },
] as const;

const sides = [
  { value: 'left', label: phrase`Left of line` },
  { value: 'right', label: phrase`Right of line` },
] as const;

const posts = [
  { value: 'start', label: phrase`Start post` },
  { value: 'end', label: phrase`End post` },
] as const;

/** How a gate closes its opening: the way, how many leaves, to which side, and what that way needs. */
export const WayFields = ({ gate, laid }: Props) => {
  const book = useBook();
  const make = useDo();
  const may = useMayOpen(laid);
  const { id } = laid;
  const { way } = gate;
  const single = Object.keys(gate.leaves).length === 1;
  return (
    <>
      <div className="pair">
        <ChoiceField
          label={phrase`Closes`}
          value={way.kind}
          choices={ways}
          onChoose={(kind) =>
            make(phrase`Change how the gate closes`, (was) =>
              closedBy(was, laid, wayToBegin(kind, was, laid), book),
            )
          }
        />
        {leafCounts[way.kind].length > 1 && (
          <ChoiceField
            label={phrase`Leaves`}
            value={single ? '1' : '2'}
            choices={counts}
            onChoose={(count) =>
              make(phrase`Change leaves`, (was) => setGateLeaves(was, id, count === '1' ? 1 : 2))
            }
          />
        )}
        {way.kind !== 'gap' && (
          <ChoiceField
            label={way.kind === 'cantilever' ? phrase`Rolls on the` : phrase`Opens to the`}
            value={gate.opens}
            choices={sides}
            onChoose={(opens) => make(phrase`Change swing`, (was) => setGateOpens(was, id, opens))}
          />
        )}
        {way.kind === 'swing' && single && (
          <ChoiceField
            label={phrase`Hinged at the`}
            value={gate.hingedAt}
            choices={posts}
            onChoose={(end) =>
              make(phrase`Change hinge side`, (was) => setGateHinged(was, id, end))
            }
          />
        )}
        <WaySizes key={way.kind} way={way} laid={laid} single={single} />
      </div>
      {may !== null && <p className="note">{phrase`May open ${may}`}</p>}
      <SlideProposal laid={laid} />
    </>
  );
};
