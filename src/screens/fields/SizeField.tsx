import { phrase } from '../../phrases/phrase.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { MaybeLengthField } from './MaybeLengthField.tsx';
import { sizeText } from './sizeText.ts';

interface Props {
  readonly label: string;
  readonly value: Inches;
  readonly style: LengthStyle;
  readonly onEnter: (value: Inches) => string | null;
  readonly note?: string;
}

/** The size of a part, which has to be said; a bare number is inches or mm. */
export const SizeField = ({ label, onEnter, ...rest }: Props) => (
  <MaybeLengthField
    {...rest}
    label={label}
    write={sizeText}
    onEnter={(value) => (value === null ? phrase`${label}: expected a length` : onEnter(value))}
  />
);
