import { useMemo, useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import type { Choices, Merge, Side } from '../../site/merge/merged.ts';
import { ConflictSide } from './ConflictSide.tsx';
import { groundOf, laidCopy } from './smallPlan.ts';

interface Props {
  readonly merge: Merge;
  readonly file: string;
  readonly onDone: (choices: Choices) => void;
}

const leftText = (left: number): string => {
  if (left === 0) return phrase`All are chosen.`;
  return left === 1
    ? phrase`1 conflict is left to choose.`
    : phrase`${left} conflicts are left to choose.`;
};

/** Every conflict of a merge, one at a time, side by side on the drawing; nothing is applied before Done. */
export const ChooseSides = ({ merge, file, onDone }: Props) => {
  const { conflicts } = merge;
  const [at, setAt] = useState(0);
  const [choices, setChoices] = useState<Choices>(new Map());
  const [asked, setAsked] = useState(false);
  const copies = useMemo(
    () => ({ mine: laidCopy(merge.mine), theirs: laidCopy(merge.theirs) }),
    [merge],
  );
  const conflict = conflicts[at];
  const key = conflict?.key ?? '';
  const ground = useMemo(() => groundOf([copies.mine, copies.theirs], key), [copies, key]);
  if (conflict === undefined) return null;
  const open = conflicts.filter(({ id }) => !choices.has(id));
  const choose = (ids: readonly string[], side: Side) =>
    setChoices(new Map([...choices, ...ids.map((id) => [id, side] as const)]));
  const done = () => {
    const [first] = open;
    if (first === undefined) return onDone(choices);
    setAsked(true);
    setAt(conflicts.indexOf(first));
  };
  const rest = open.map(({ id }) => id);
  return (
    <div className="merge">
      <h3 aria-live="polite">{phrase`${at + 1} of ${conflicts.length}. ${conflict.what}`}</h3>
      <div className="merge-sides">
        {(['mine', 'theirs'] as const).map((side) => (
          <ConflictSide
            key={`${side} ${conflict.id}`}
            conflict={conflict}
            side={side}
            whose={side === 'mine' ? phrase`Here` : file}
            copy={copies[side]}
            ground={ground}
            chosen={choices.get(conflict.id) === side}
            onChoose={() => choose([conflict.id], side)}
          />
        ))}
      </div>
      <div className="choices">
        <button
          type="button"
          disabled={at === 0}
          onClick={() => setAt(at - 1)}
        >{phrase`Previous`}</button>
        <button
          type="button"
          disabled={at === conflicts.length - 1}
          onClick={() => setAt(at + 1)}
        >{phrase`Next`}</button>
        <button type="button" className="chief" onClick={done}>{phrase`Done`}</button>
      </div>
      <p role="status" className={asked && open.length > 0 ? 'fault' : 'note'}>
        {leftText(open.length)}
      </p>
      {open.length > 1 && (
        <div className="choices">
          <button
            type="button"
            onClick={() => choose(rest, 'mine')}
          >{phrase`Keep what is here for all that are left`}</button>
          <button
            type="button"
            onClick={() => choose(rest, 'theirs')}
          >{phrase`Take what came for all that are left`}</button>
        </div>
      )}
      <p className="note">{phrase`The drawing stays as it is until Done; one undo takes all of it back.`}</p>
    </div>
  );
};
