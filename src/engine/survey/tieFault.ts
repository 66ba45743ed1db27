import type { Tied } from '../../geometry/tied.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** Why two tapes do not meet, in one line; null where they do. */
export const tieFault = (tie: Tied<'site'>, style: LengthStyle): string | null => {
  const by = (length: number): string => formatLength(inches(length), style);
  switch (tie.kind) {
    case 'met':
      return null;
    case 'short':
      return phrase`the two tapes are ${by(tie.by)} too short together to meet: tape them again`;
    case 'long':
      return tie.tape === 'start'
        ? phrase`the first tape is ${by(tie.by)} too long to meet the other: tape them again`
        : phrase`the second tape is ${by(tie.by)} too long to meet the other: tape them again`;
    case 'no base':
      return phrase`both tapes are hooked on one spot: hook them on two marks`;
  }
};
