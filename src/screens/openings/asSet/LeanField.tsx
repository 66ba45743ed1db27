import { useState } from 'react';
import { inches, type Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { MaybeLengthField } from '../MaybeLengthField.tsx';

interface Props {
  /** The post, with a capital. */
  readonly name: string;
  /** Above zero into the opening; null where nobody has looked. */
  readonly lean: Inches | null;
  readonly style: LengthStyle;
  readonly onEnter: (lean: Inches | null) => string | null;
}

const ways = [
  { value: 'in', label: 'into the opening' },
  { value: 'out', label: 'away from it' },
] as const;

/** How far the top of a post leans, and which way: no minus has to be typed. */
export const LeanField = ({ name, lean, style, onEnter }: Props) => {
  const [chosen, choose] = useState<'in' | 'out'>('in');
  const way = lean === null || lean === 0 ? chosen : lean < 0 ? 'out' : 'in';
  const signed = (size: number, to: 'in' | 'out') => inches(to === 'in' ? size : 0 - size);
  return (
    <div className="lean">
      <MaybeLengthField
        label={`${name}: top leans by`}
        value={lean === null ? null : inches(Math.abs(lean))}
        style={style}
        onEnter={(size) => {
          if (size === null) return onEnter(null);
          return size < 0
            ? `${name}: expected 0 or more, and the way beside it`
            : onEnter(signed(size, way));
        }}
      />
      <ChoiceField
        label="Leans"
        value={way}
        choices={ways}
        onChoose={(to) => {
          choose(to);
          if (lean !== null && lean !== 0) onEnter(signed(Math.abs(lean), to));
        }}
      />
    </div>
  );
};
