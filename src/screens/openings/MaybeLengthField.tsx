import { exactStyle } from '../../drawing/orders/exactStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { parseLength } from '../../units/parseLength.ts';
import { TextField } from '../fields/TextField.tsx';
import { smallUnit } from '../yard/cards/SpecFields.tsx';

interface Props {
  readonly label: string;
  /** Null where nobody has said: the field is empty. */
  readonly value: Inches | null;
  readonly style: LengthStyle;
  readonly onEnter: (value: Inches | null) => string | null;
  readonly note?: string;
}

/** A length that may be left out, written without rounding it; a bare number is inches or mm. */
export const MaybeLengthField = ({ label, value, style, onEnter, ...rest }: Props) => (
  <TextField
    {...rest}
    label={label}
    value={value === null ? '' : formatLength(value, exactStyle([value], style))}
    onEnter={(text) => {
      if (text.trim() === '') return onEnter(null);
      const length = parseLength(text, smallUnit(style.system));
      return length.ok ? onEnter(length.value) : `${label}: ${length.reason}`;
    }}
  />
);
