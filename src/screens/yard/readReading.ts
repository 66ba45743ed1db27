import { readTyped } from '../../editor/typed.ts';
import type { Inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { inches } from '../../units/inches.ts';
import { read, type Parsed } from '../../units/parsed.ts';
import { parseLength } from '../../units/parseLength.ts';

/** What a tape reads, as it is typed: above zero and up to a mile; else one line that says why not. */
export const readReading = (text: string, style: LengthStyle): Parsed<Inches> => {
  const length = parseLength(text, style.system);
  if (!length.ok) return length;
  const typed = readTyped({ length: length.value, bearing: null }, style);
  return typed.ok ? read(inches(typed.value.length ?? length.value)) : typed;
};
