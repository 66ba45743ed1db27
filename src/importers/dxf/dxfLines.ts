import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { phrase } from '../../phrases/phrase.ts';

const code = /^\s*\d{1,4}\s*$/;
const decimalComma = /^\s*[-+]?\d*,\d/;

/** Groups 10 to 59 are numbers with decimals (public DXF reference). */
const isNumber = (group: number): boolean => group >= 10 && group <= 59;

/**
 * The lines of the text of a DXF file, in pairs of a group code and a value, up to its EOF. Unread with
 * one line for a text that is not in such pairs, breaks off, or has a comma in a number: what reads
 * numbers stops there.
 */
export const dxfLines = (text: string): Parsed<readonly string[]> => {
  const lines = text.split(/\r\n|\r|\n/);
  const [begins = ''] = lines;
  if (!code.test(begins)) {
    return unread(phrase`line 1: expected a DXF saved as text, found ${quotedText(begins)}`);
  }
  for (let n = 0; n + 1 < lines.length; n += 2) {
    const [group = '', value = ''] = [lines[n], lines[n + 1]];
    if (!code.test(group)) {
      return unread(phrase`line ${n + 1}: expected a group code, found ${quotedText(group)}`);
    }
    if (isNumber(Number(group)) && decimalComma.test(value)) {
      return unread(
        phrase`line ${n + 2}: expected a number with a decimal point, found ${quotedText(value.trim())}`,
      );
    }
    if (Number(group) === 0 && value.trim() === 'EOF') return read(lines.slice(0, n));
  }
  return unread(phrase`ends too early: expected EOF at its end, so part of it is missing`);
};
