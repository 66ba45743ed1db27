import { phrase } from '../../phrases/phrase.ts';
import { mended, type Mend } from '../../engine/mend.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { useSite } from '../bench.ts';
import { useDo } from './cards/useEdit.ts';

const wordsOf = (mend: Mend, style: LengthStyle): string => {
  switch (mend.kind) {
    case 'deepen holes':
      return phrase`Dig every hole of this build ${formatLength(mend.depth, style)} deep`;
    case 'bays by wind':
      return phrase`Shorten bays to what line posts bear`;
    case 'gate posts':
      return phrase`Gate posts of ${mend.post.label}`;
    case 'open away':
      return phrase`Open it the other way`;
  }
};

/** The one step that takes a flag away. */
export const MendKey = ({ mend }: { readonly mend: Mend }) => {
  const { lengths } = useSite();
  const make = useDo();
  const words = wordsOf(mend, lengths);
  return (
    <button type="button" onClick={() => make(words, (was) => mended(was, mend))}>
      {words}
    </button>
  );
};
