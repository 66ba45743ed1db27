import { useState } from 'react';
import { inches, type Inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { FoundField } from './FoundField.tsx';
import { sizeFault } from './sizeFault.ts';
import { phrase, phraseOf } from '../../../phrases/phrase.ts';

interface Props {
  /** The post, with a capital. */
  readonly name: string;
  /** Above zero into the opening; null where nobody has looked. */
  readonly lean: Inches | null;
  readonly onEnter: (lean: Inches | null) => string | null;
}

const ways = [
  { way: 'in', short: phraseOf('lean')`in`, name: phrase`in: into the opening` },
  { way: 'out', short: phraseOf('lean')`out`, name: phrase`out: away from the opening` },
] as const;

/** How far the top of a post leans, and which way: no minus has to be typed. */
export const LeanField = ({ name, lean, onEnter }: Props) => {
  const { lengths } = useSite();
  const [chosen, choose] = useState<'in' | 'out'>('in');
  const way = lean === null || lean === 0 ? chosen : lean < 0 ? 'out' : 'in';
  const signed = (size: number, to: 'in' | 'out') => inches(to === 'in' ? size : 0 - size);
  return (
    <div className="lean">
      <FoundField
        label={phrase`${name}: top leans by`}
        value={lean === null ? null : inches(Math.abs(lean))}
        onEnter={(size) => {
          if (size === null) return onEnter(null);
          const wrong = sizeFault(size, '0 or more');
          if (wrong === null) return onEnter(signed(size, way));
          const found = sizeText(size, lengths);
          return size < 0
            ? phrase`${name}: ${wrong}, and which way beside it, found ${found}`
            : phrase`${name}: ${wrong}, found ${found}`;
        }}
      />
      <div role="group" aria-label={phrase`${name} leans`}>
        {ways.map(({ way: to, short, name: said }) => (
          <button
            key={to}
            type="button"
            aria-label={said}
            aria-pressed={way === to}
            onClick={() => {
              choose(to);
              if (lean !== null && lean !== 0) onEnter(signed(Math.abs(lean), to));
            }}
          >
            {short}
          </button>
        ))}
      </div>
    </div>
  );
};
