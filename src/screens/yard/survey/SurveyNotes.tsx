import { markName } from '../../../engine/survey/markName.ts';
import type { Observation } from '../../../site/observation.ts';
import type { ObservationId } from '../../../site/ids.ts';
import { useLayout, useSite } from '../../bench.ts';
import { SheetOver } from '../../frame/SheetOver.tsx';
import { UndoKeys } from '../../frame/UndoKeys.tsx';
import { AddObservation } from './AddObservation.tsx';
import { ObservationRow } from './ObservationRow.tsx';
import { NextTape } from './NextTape.tsx';
import { standsText } from '../../../engine/survey/standsText.ts';
import { joined, phrase } from '../../../phrases/phrase.ts';
import { Suspects } from './Suspects.tsx';
import './survey.css';
import { TrustFields } from './TrustFields.tsx';
import { useSurvey } from './useSurvey.ts';

const Loose = () => {
  const site = useSite();
  const { posts, survey } = useLayout();
  if (survey.loose.length === 0 || survey.stands === 'sketched') return null;
  const names = survey.loose.map((id) => markName(site, posts, id));
  return <p className="note">{phrase`Loose, as sketched: ${joined(names, ', ')}.`}</p>;
};

/** All that was observed of where marks stand, how it agrees, and what would help. */
export const SurveyNotes = ({ onClose }: { readonly onClose: () => void }) => {
  const { observations } = useSite();
  const survey = useSurvey();
  const rows = Object.entries(observations) as [ObservationId, Observation][];
  return (
    <SheetOver title={phrase`Tapes and what they say`} onClose={onClose}>
      <div className="stack survey">
        <div className="choices">
          <UndoKeys />
        </div>
        <p className={`survey-stands ${survey.stands}`} role="status">
          {standsText(survey)}
        </p>
        <Suspects onShow={onClose} />
        <Loose />
        <NextTape />
        {rows.length === 0 && (
          <p className="note">
            {phrase`Draw the yard roughly, then take the Tape tool, tap two marks and type what the tape reads. Every length that you type while drawing is a tape too. Two diagonals over four corners show an error.`}
          </p>
        )}
        <ol className="plain">
          {rows.map(([id, seen]) => (
            <ObservationRow key={id} id={id} seen={seen} />
          ))}
        </ol>
        <AddObservation />
        <TrustFields />
        <p className="note">
          {phrase`This finds misread tapes. It is no boundary survey: where a lot line runs, a licensed surveyor says.`}
        </p>
      </div>
    </SheetOver>
  );
};
