import type { Survey } from '../../../engine/survey/survey.ts';
import { useLayout } from '../../bench.ts';

/** What the observations of the yard as it is shown say of it. */
export const useSurvey = (): Survey => useLayout().survey;
