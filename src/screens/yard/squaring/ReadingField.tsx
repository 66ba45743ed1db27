import { formatLength } from '../../../units/formatLength.ts';
import type { Inches } from '../../../units/inches.ts';
import type { LengthStyle } from '../../../units/lengthStyle.ts';
import { parseLength } from '../../../units/parseLength.ts';
import { TextField } from '../../fields/TextField.tsx';

interface Props {
  readonly label: string;
  /** Null where nothing was read yet: the field is empty. */
  readonly value: Inches | null;
  readonly style: LengthStyle;
  readonly onEnter: (value: Inches | null) => void;
}

/** What a tape reads, or nothing yet. */
export const ReadingField = ({ label, value, style, onEnter }: Props) => (
  <TextField
    label={label}
    value={value === null ? '' : formatLength(value, style)}
    onEnter={(text) => {
      const length = text.trim() === '' ? null : parseLength(text, style.system);
      if (length?.ok === false) return `${label}: ${length.reason}`;
      onEnter(length?.value ?? null);
      return null;
    }}
  />
);
