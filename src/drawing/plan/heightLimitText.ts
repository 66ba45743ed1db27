import type { Feature } from '../../site/feature.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

type Limits = Pick<Extract<Feature, { kind: 'height zone' }>, 'solid' | 'open'>;

/** How high fence may stand there, such as `no higher than 2'-6"`; both limits where they differ. */
export const heightLimitText = ({ solid, open }: Limits, lengths: LengthStyle): string => {
  const [high, seen] = [solid, open].map((limit) => formatLength(limit, fineStyle(lengths)));
  return solid === open
    ? phrase`no higher than ${high ?? ''}`
    : phrase`no higher than ${high ?? ''}, open fence ${seen ?? ''}`;
};
