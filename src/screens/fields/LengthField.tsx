import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle, LengthSystem } from '../../units/lengthStyle.ts';
import { parseLength } from '../../units/parseLength.ts';
import { TextField } from './TextField.tsx';

interface Props {
  readonly label: string;
  readonly value: Inches;
  readonly style: LengthStyle;
  /** The unit of a number typed without one; the style's own where it is not given. */
  readonly bare?: LengthSystem;
  readonly onEnter: (value: Inches) => string | null;
  readonly note?: string;
}

/** A length, read in every way a tape is read and written in the site's own style. */
export const LengthField = ({ label, value, style, bare, onEnter, ...rest }: Props) => (
  <TextField
    {...rest}
    label={label}
    value={formatLength(value, style)}
    onEnter={(text) => {
      const length = parseLength(text, bare ?? style.system);
      return length.ok ? onEnter(length.value) : `${label}: ${length.reason}`;
    }}
  />
);
