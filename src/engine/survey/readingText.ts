import { offText } from './figureText.ts';
import type { Reading } from './survey.ts';
import type { Observation } from '../../site/observation.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Below this an error in a reading would hardly show in any other. Ours, no published source. */
const shows = 0.05;

/** How a reading agrees with the others, in a few words. */
export const readingText = (
  { kind }: Pick<Observation, 'kind'>,
  { residual, redundancy, standardised }: Reading,
  style: LengthStyle,
): string => {
  if (kind === 'fix') return phrase`rough, ${offText(kind, residual, style)} off`;
  if (redundancy < shows || standardised === null) return phrase`nothing checks it`;
  const off = offText(kind, residual, style);
  const times = Math.abs(standardised).toFixed(1);
  const check = phrase`${Math.round(redundancy * 100)} % checked`;
  return phrase`${off} off, ${times} × what is usual; ${check}`;
};
