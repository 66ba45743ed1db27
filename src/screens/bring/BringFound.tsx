import { useState } from 'react';
import { usualBecomes } from '../../importers/usualBecomes.ts';
import { phrase } from '../../phrases/phrase.ts';
import type { Becomes } from '../../site/becomes.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import { useSession, useSite } from '../bench.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { BringGroups } from './BringGroups.tsx';
import { BringTold } from './BringTold.tsx';
import type { GroupSummary } from './foundSummary.ts';
import { useBring } from './useBring.ts';
import type { FileFound } from './useFound.ts';

interface Props {
  readonly name: string;
  readonly found: FileFound;
  readonly onDone: () => void;
}

/** How far the straight pieces of a curve may lie inside it, inches. */
const chords = ['0.25', '1', '3'] as const;
type Chord = (typeof chords)[number];

interface HowProps {
  readonly chosen: readonly { readonly group: GroupSummary; readonly becomes: Becomes }[];
  readonly chord: Chord;
  readonly onChord: (chord: Chord) => void;
}

/** What fence lines are built as, and how curves are made straight, where there are any. */
const BringHow = ({ chosen, chord, onChord }: HowProps) => {
  const { lengths } = useSite();
  const { spec } = useSession((session) => session.plans.fence);
  const write = (value: Chord) => formatLength(inches(Number(value)), lengths);
  return (
    <>
      {chosen.some(({ becomes }) => becomes === 'fence line') && (
        <p className="note">{phrase`Fence lines are built as the next fence is: ${spec.label}.`}</p>
      )}
      {chosen.some(({ group, becomes }) => group.bent && becomes !== 'fence line') && (
        <ChoiceField
          label={phrase`Curves become straight pieces that lie inside them by up to`}
          value={chord}
          choices={chords.map((value) => ({ value, label: write(value) }))}
          onChoose={onChord}
        />
      )}
    </>
  );
};

/** What a file has, what each of it becomes, and the key that brings it onto the pad. */
export const BringFound = ({ name, found, onDone }: Props) => {
  const { groups } = found.summary;
  const [becomes, setBecomes] = useState<Readonly<Record<string, Becomes>>>(() =>
    Object.fromEntries(groups.map((group) => [group.key, usualBecomes(group)])),
  );
  const [chord, setChord] = useState<Chord>('1');
  const { bring, busy, fault, clear } = useBring(name, found);
  const chosen = groups
    .map((group) => ({ group, becomes: becomes[group.key] ?? 'leave out' }))
    .filter((one) => one.becomes !== 'leave out');
  const count = chosen.reduce((sum, { group }) => sum + group.count, 0);
  const choose = (next: Readonly<Record<string, Becomes>>) => {
    clear();
    setBecomes(next);
  };
  return (
    <>
      <BringTold {...found.summary} />
      <section aria-label={phrase`What it becomes`}>
        <h3>{phrase`What it becomes`}</h3>
        <BringGroups groups={groups} becomes={becomes} onChoose={choose} />
        <BringHow chosen={chosen} chord={chord} onChord={setChord} />
      </section>
      {fault !== null && (
        <p className="fault" role="alert">{phrase`${name}: ${fault}; the drawing is as it was`}</p>
      )}
      <div className="choices">
        <button
          type="button"
          className="chief"
          disabled={count === 0 || busy}
          onClick={() =>
            void bring({ becomes, chord: inches(Number(chord)) }).then((done) => done && onDone())
          }
        >
          {count === 0
            ? phrase`Nothing is chosen`
            : phrase`Bring in ${count.toLocaleString('en-US')}`}
        </button>
        <button type="button" onClick={onDone}>{phrase`Leave it`}</button>
      </div>
    </>
  );
};
