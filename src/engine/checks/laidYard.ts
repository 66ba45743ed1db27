import type { LaidLines } from '../posts/layLines.ts';
import type { Survey } from '../survey/survey.ts';
import type { Surroundings } from '../sweep/meetings.ts';

/** What the checks look at. */
export interface LaidYard extends LaidLines {
  readonly survey: Survey;
  /** What leaves could meet, worked out once where somebody asks. */
  readonly around: () => Surroundings;
}
