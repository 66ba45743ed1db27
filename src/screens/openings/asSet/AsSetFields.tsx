import './asSet.css';
import { postName } from '../../../engine/set/postName.ts';
import { setOf } from '../../../engine/set/setOf.ts';
import { leavesOf } from '../../../engine/gate/termsOf.ts';
import type { AsSet } from '../../../site/asSet.ts';
import type { Gate } from '../../../site/gate.ts';
import type { GateId } from '../../../site/ids.ts';
import type { Inches } from '../../../units/inches.ts';
import { useLayout, useSite } from '../../bench.ts';
import { TextField } from '../../fields/TextField.tsx';
import { today } from '../../today.ts';
import { MaybeLengthField } from '../MaybeLengthField.tsx';
import { blankAsSet } from './blankAsSet.ts';
import { LeafFound } from './LeafFound.tsx';
import { LeanField } from './LeanField.tsx';
import { Remedies } from './Remedies.tsx';
import { useAsSet } from './useAsSet.ts';
import { Verdict } from './Verdict.tsx';

/**
 * What the crew found when the posts of a gate were set, typed in with one hand, and what comes of
 * it: the verdict, the gap that results and what helps. Every entry is an edit of its own.
 */
export const AsSetFields = ({ gate }: { readonly gate: GateId }) => {
  const site = useSite();
  const { asSet, record, forget } = useAsSet(gate);
  const drawn = site.gates[gate];
  if (drawn === undefined || drawn.way.kind === 'gap') return null;
  const set = setOf(site, drawn);
  return (
    <details className="more as-set" open={asSet !== null}>
      <summary>As set by the crew</summary>
      <div className="found">
        <WidthFields asSet={asSet} onRecord={record} />
        {asSet !== null && (
          <>
            <LeanFields gate={gate} drawn={drawn} asSet={asSet} onRecord={record} />
            <FoundAgain drawn={drawn} asSet={asSet} onRecord={record} />
            <Signed asSet={asSet} onRecord={record} />
          </>
        )}
        {set !== null && <Verdict set={set} />}
        {set !== null && <Remedies set={set} />}
        {asSet !== null && (
          <button type="button" onClick={forget}>
            Forget what was set
          </button>
        )}
      </div>
    </details>
  );
};

interface Recorded {
  readonly asSet: AsSet;
  readonly onRecord: (label: string, next: AsSet) => string | null;
}

interface WidthProps {
  readonly asSet: AsSet | null;
  readonly onRecord: Recorded['onRecord'];
}

const WidthFields = ({ asSet, onRecord }: WidthProps) => {
  const { lengths } = useSite();
  const topEntered = (top: Inches | null): string | null => {
    if (top === null) return 'Opening at the top: expected a width, found none';
    if (!(top > 0)) return 'Opening at the top: expected more than 0';
    const next = asSet === null ? blankAsSet(top, today()) : { ...asSet, top };
    return onRecord('Record opening as set', next);
  };
  const bottomEntered = (bottom: Inches | null): string | null => {
    if (asSet === null) return 'Opening at the bottom: expected the one at the top first';
    if (bottom !== null && !(bottom > 0)) return 'Opening at the bottom: expected more than 0';
    return onRecord('Record opening as set', { ...asSet, bottom });
  };
  return (
    <>
      <MaybeLengthField
        label="Opening at the top"
        value={asSet?.top ?? null}
        style={lengths}
        note="Inside of post to inside of post"
        onEnter={topEntered}
      />
      <MaybeLengthField
        label="Opening at the bottom"
        value={asSet?.bottom ?? null}
        style={lengths}
        note="Measure both: posts lean"
        onEnter={bottomEntered}
      />
    </>
  );
};

interface LeanProps extends Recorded {
  readonly gate: GateId;
  readonly drawn: Gate;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const LeanFields = ({ gate, drawn, asSet, onRecord }: LeanProps) => {
  const { lengths } = useSite();
  const layout = useLayout();
  return (['start', 'end'] as const).map((end) => {
    const id = layout.gates[gate]?.posts?.[end];
    const tag = id === undefined ? undefined : layout.posts[id]?.tag;
    return (
      <LeanField
        key={end}
        name={`${capital(postName(drawn, end).replace(/^the /, ''))}${tag === undefined ? '' : ` (${tag})`}`}
        lean={asSet.leans[end]}
        style={lengths}
        onEnter={(lean) =>
          onRecord('Record lean of post', { ...asSet, leans: { ...asSet.leans, [end]: lean } })
        }
      />
    );
  });
};

const FoundAgain = ({ drawn, asSet, onRecord }: Recorded & { readonly drawn: Gate }) => {
  const { lengths } = useSite();
  const leaves = leavesOf(drawn);
  return (
    <details className="more">
      <summary>Leaves and hinges measured again</summary>
      <div className="found">
        {leaves.map(({ id, hinge }, n) => (
          <LeafFound
            key={id}
            id={id}
            name={leaves.length === 1 ? 'Leaf' : `Leaf ${n + 1}`}
            hinged={hinge !== null}
            asSet={asSet}
            style={lengths}
            onRecord={onRecord}
          />
        ))}
      </div>
    </details>
  );
};

const Signed = ({ asSet, onRecord }: Recorded) =>
  (
    [
      ['by', 'Set by (initials)'],
      ['on', 'Set on'],
    ] as const
  ).map(([key, label]) => (
    <TextField
      key={key}
      label={label}
      value={asSet[key]}
      onEnter={(text) => onRecord('Sign set record', { ...asSet, [key]: text.trim() })}
    />
  ));
