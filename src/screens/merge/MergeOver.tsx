import './merge.css';
import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import { cameTexts } from '../../site/merge/cameTexts.ts';
import type { Choices } from '../../site/merge/merged.ts';
import { useBench } from '../bench.ts';
import { SheetOver } from '../frame/SheetOver.tsx';
import { useStored } from '../useStored.ts';
import { applyMerge } from './applyMerge.ts';
import { ChooseSides } from './ChooseSides.tsx';
import type { Offer } from './offer.ts';
import { openBeside } from './openCopy.ts';

const standing: Readonly<Record<Offer['is'], string>> = {
  apart: phrase`It is a copy of the job on the pad, changed apart from it.`,
  'without what both came from': phrase`It is a copy of the job on the pad. This device does not have what both came from, so everything of both is kept, and each difference is asked.`,
  older: phrase`It is an older copy of the job on the pad: all that is in it is in the drawing already.`,
  newer: phrase`It is a newer copy of the job on the pad: the drawing here has nothing that it has not.`,
  same: phrase`It is the drawing that is on the pad.`,
};

const conflictText = (count: number): string => {
  if (count === 0) return phrase`Nothing is in conflict.`;
  return count === 1
    ? phrase`1 conflict is to be chosen.`
    : phrase`${count} conflicts are to be chosen, one by one.`;
};

interface Props {
  readonly offer: Offer;
  readonly onMerge: () => void;
  readonly onBeside: () => void;
}

/** What came in the file, and what may become of it. */
const Offered = ({ offer, onMerge, onBeside }: Props) => {
  const came = cameTexts(offer.merge);
  const anything = offer.is !== 'same' && offer.is !== 'older';
  return (
    <div className="merge">
      <p>
        <b>{offer.file}</b>
      </p>
      <p>{standing[offer.is]}</p>
      {anything && (
        <>
          <h3>{phrase`What comes with it`}</h3>
          {came.length === 0 ? (
            <p>{phrase`Nothing but what is in conflict.`}</p>
          ) : (
            <ul>
              {came.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          )}
          <p>{conflictText(offer.merge.conflicts.length)}</p>
        </>
      )}
      <div className="choices">
        {anything && (
          <button type="button" className="chief" onClick={onMerge}>{phrase`Merge`}</button>
        )}
        <button type="button" onClick={onBeside}>{phrase`Open as a job of its own`}</button>
      </div>
      <p className="note">{phrase`Either can be undone like any other step.`}</p>
    </div>
  );
};

const MergeSheet = ({
  offer,
  onClose,
}: {
  readonly offer: Offer;
  readonly onClose: () => void;
}) => {
  const bench = useBench();
  const [choosing, setChoosing] = useState(false);
  const apply = (choices: Choices) => {
    applyMerge(bench, offer, choices);
    onClose();
  };
  const merge = () => (offer.merge.conflicts.length === 0 ? apply(new Map()) : setChoosing(true));
  const beside = () => {
    openBeside(bench, offer.theirs, offer.file);
    onClose();
  };
  return (
    <SheetOver
      title={choosing ? phrase`Conflicts` : phrase`A copy of this job`}
      close={phrase`Leave`}
      onClose={onClose}
    >
      {choosing ? (
        <ChooseSides merge={offer.merge} file={offer.file} onDone={apply} />
      ) : (
        <Offered offer={offer} onMerge={merge} onBeside={beside} />
      )}
    </SheetOver>
  );
};

/** The sheet of a copy of the job on the pad that waits, over whatever screen there is. */
export const MergeOver = () => {
  const { copy } = useBench();
  const offer = useStored(copy, (waiting) => waiting);
  return offer === null ? null : (
    <MergeSheet offer={offer} onClose={() => copy.setState(null, true)} />
  );
};
