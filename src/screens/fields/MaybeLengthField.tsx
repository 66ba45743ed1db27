import { exactStyle } from '../../drawing/orders/exactStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { parseLength } from '../../units/parseLength.ts';
import { TextField } from './TextField.tsx';
import { smallUnit } from './smallUnit.ts';

interface Props {
  readonly label: string;
  /** Null where nobody has said: the field is empty. */
  readonly value: Inches | null;
  readonly style: LengthStyle;
  readonly onEnter: (value: Inches | null) => string | null;
  readonly note?: string;
  /** Which keys a phone shows; `none` where the page has its own. */
  readonly keys?: 'text' | 'none';
  /** How it is written; else without rounding it, to 1/32 in. */
  readonly write?: (value: Inches, style: LengthStyle) => string;
}

const asTape = (value: Inches, style: LengthStyle): string =>
  formatLength(value, exactStyle([value], style));

/** A length that may be left out, written without rounding it; a bare number is inches or mm. */
export const MaybeLengthField = (props: Props) => {
  const { label, value, style, onEnter, write = asTape, ...rest } = props;
  return (
    <TextField
      {...rest}
      label={label}
      value={value === null ? '' : write(value, style)}
      onEnter={(text) => {
        if (text.trim() === '') return onEnter(null);
        const length = parseLength(text, smallUnit(style.system));
        return length.ok ? onEnter(length.value) : `${label}: ${length.reason}`;
      }}
    />
  );
};
