import { formatLength } from '../../units/formatLength.ts';
import { inches, type Inches } from '../../units/inches.ts';

/**
 * A length of zero or more as on a tape where a tape has it: `1 7/8"` for whole 32nds of an inch,
 * `45 mm` or `45.5 mm` for whole tenths of a millimetre, else decimal inches. `parseLength` reads
 * each back to the last bit, from a billionth of an inch up.
 */
export const exactText = (length: Inches): string => {
  if (Number.isInteger(length * 32)) {
    return formatLength(length, { system: 'inches', fraction: 32 });
  }
  const tenths = Math.round(length * 254);
  if (inches(tenths / 254) === length) return `${tenths / 10} mm`;
  const decimal = String(length);
  return `${decimal.includes('e') ? length.toFixed(30) : decimal}"`;
};
