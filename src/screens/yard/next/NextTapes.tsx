import { NextTape } from '../survey/NextTape.tsx';
import { SurveyKey } from '../survey/SurveyKey.tsx';

/** How the yard stands by its tapes, and the tape that would help most. */
export const NextTapes = () => (
  <>
    <SurveyKey />
    <NextTape />
  </>
);
