import './asSet.css';
import { useMemo, useState } from 'react';
import { setMarks } from '../../../drawing/opening/setMarks.ts';
import { setWords } from '../../../drawing/opening/setWords.ts';
import type { GateLayout } from '../../../engine/layout.ts';
import { setOf } from '../../../engine/set/setOf.ts';
import type { Gate } from '../../../site/gate.ts';
import { useLayout, useSite } from '../../bench.ts';
import { OpeningBar } from '../OpeningBar.tsx';
import { FoundAgain } from './FoundAgain.tsx';
import { LeanField } from './LeanField.tsx';
import { postTitle } from './postTitle.ts';
import { Remedies } from './Remedies.tsx';
import { recordAt } from './showRecord.ts';
import { Signed } from './Signed.tsx';
import { TapeKeys } from './TapeKeys.tsx';
import { useAsSet, type Recorder } from './useAsSet.ts';
import { WidthFields } from './WidthFields.tsx';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly gate: GateLayout;
  readonly drawn: Gate;
  /** Of the gate. */
  readonly name: string;
}

/**
 * What the crew found when the posts of a gate were set, typed in with one hand, and what comes of
 * it: the verdict, the gap that results and what helps. Every entry is an edit of its own. It stands
 * open where what was set wants attention.
 */
export const SetRecord = ({ gate, drawn, name }: Props) => {
  const { asSet, record, forget } = useAsSet(gate.id);
  const words = setWords(useSite(), drawn, gate.opening);
  const [open, setOpen] = useState(words !== null && words.level !== 'holds');
  return (
    <details
      className="more as-set"
      id={recordAt(gate.id)}
      open={open}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <span>
          {phrase`As set by the crew`}
          {words !== null && !open && <b className={`found-so ${words.level}`}>{words.words}</b>}
        </span>
      </summary>
      <TapeKeys>
        <WidthFields asSet={asSet} target={gate.opening.target} onRecord={record} />
        <div role="status" className={`verdict ${words?.level ?? 'none'}`}>
          {words !== null && (
            <>
              <strong>{words.words}</strong>
              <span>{words.gap}</span>
            </>
          )}
        </div>
        <Outcome gate={gate} drawn={drawn} name={name} />
        {asSet !== null && (
          <>
            <Leans gate={gate} drawn={drawn} onRecord={record} />
            <FoundAgain drawn={drawn} asSet={asSet} onRecord={record} />
            <Signed asSet={asSet} onRecord={record} />
            <button type="button" onClick={forget}>
              {phrase`Forget what was set`}
            </button>
          </>
        )}
      </TapeKeys>
    </details>
  );
};

/** Where what was set came out, with the leaves and hinges that were measured on site. */
const Outcome = ({ gate, drawn, name }: Props) => {
  const site = useSite();
  const set = useMemo(() => setOf(site, drawn), [site, drawn]);
  const marks = useMemo(() => setMarks(site, drawn.asSet), [site, drawn.asSet]);
  if (set === null) return null;
  return (
    <>
      <OpeningBar
        opening={set.opening}
        set={marks}
        label={phrase`${name} as set: where it came out on a ruler of what holds with the leaves and hinges found`}
      />
      <Remedies set={set} gate={gate} />
    </>
  );
};

interface LeansProps extends Omit<Props, 'name'> {
  readonly onRecord: Recorder;
}

const Leans = ({ gate, drawn, onRecord }: LeansProps) => {
  const layout = useLayout();
  const { asSet } = drawn;
  if (asSet === null) return null;
  return (['start', 'end'] as const).map((end) => (
    <LeanField
      key={end}
      name={postTitle(drawn, gate, { layout, end })}
      lean={asSet.leans[end]}
      onEnter={(lean) =>
        onRecord(phrase`Record lean of post`, { ...asSet, leans: { ...asSet.leans, [end]: lean } })
      }
    />
  ));
};
