import { formatLength } from '../../../units/formatLength.ts';
import type { Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { TextField } from '../../fields/TextField.tsx';
import { readHeight } from '../cards/readHeight.ts';

interface Props {
  readonly label: string;
  readonly value: Inches | null;
  readonly style: LengthStyle;
  /** Null where the field was emptied. */
  readonly onEnter: (value: Inches | null) => string | null;
}

/** A reading of the rod, a height or a distance, which may not be there. */
export const RodField = ({ label, value, style, onEnter }: Props) => (
  <TextField
    label={label}
    keys="decimal"
    value={value === null ? '' : formatLength(value, style)}
    onEnter={(text) => {
      if (text.trim() === '') return onEnter(null);
      const length = readHeight(text, style.system);
      return length.ok ? onEnter(length.value) : `${label}: ${length.reason}`;
    }}
  />
);
