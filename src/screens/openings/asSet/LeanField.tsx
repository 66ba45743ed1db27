import { useState } from 'react';
import { inches, type Inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { sizeText } from '../../fields/sizeText.ts';
import { FoundField } from './FoundField.tsx';
import { sizeFault } from './sizeFault.ts';

interface Props {
  /** The post, with a capital. */
  readonly name: string;
  /** Above zero into the opening; null where nobody has looked. */
  readonly lean: Inches | null;
  readonly onEnter: (lean: Inches | null) => string | null;
}

const ways = [
  { way: 'in', name: 'in: into the opening' },
  { way: 'out', name: 'out: away from the opening' },
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
        label={`${name}: top leans by`}
        value={lean === null ? null : inches(Math.abs(lean))}
        onEnter={(size) => {
          if (size === null) return onEnter(null);
          const wrong = sizeFault(size, '0 or more');
          return wrong === null
            ? onEnter(signed(size, way))
            : `${name}: ${wrong}${size < 0 ? ', and which way beside it' : ''}, found ${sizeText(size, lengths)}`;
        }}
      />
      <div role="group" aria-label={`${name} leans`}>
        {ways.map(({ way: to, name: said }) => (
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
            {to}
          </button>
        ))}
      </div>
    </div>
  );
};
