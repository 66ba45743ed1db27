import { useState } from 'react';
import { useSite } from '../../bench.ts';
import { standsText } from '../../../engine/survey/standsText.ts';
import { phrase } from '../../../phrases/phrase.ts';
import { SurveyNotes } from './SurveyNotes.tsx';
import { useSurvey } from './useSurvey.ts';

/** How the yard stands by its tapes, on a key that opens them. */
export const SurveyKey = () => {
  const survey = useSurvey();
  const { observations } = useSite();
  const [open, setOpen] = useState(false);
  // what satellites found is no tape and holds nothing
  const count = Object.values(observations).filter(({ kind }) => kind !== 'fix').length;
  return (
    <>
      <button
        type="button"
        className={`survey-key ${survey.stands}`}
        aria-haspopup="dialog"
        onClick={() => setOpen(true)}
      >
        <span>
          <b>{count === 0 ? phrase`Tapes` : phrase`Tapes: ${count}`}</b> {standsText(survey)}
        </span>
      </button>
      {open && <SurveyNotes onClose={() => setOpen(false)} />}
    </>
  );
};
