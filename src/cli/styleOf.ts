import type { LengthStyle } from '../units/lengthStyle.ts';
import type { Call } from './call.ts';
import { inchStyle } from './inchStyle.ts';

const metric = /\d ?[mc]?m$/;

/**
 * How an answer is written: in millimetres where every length of the call was given in metric, else
 * in inches. Options in `others` are no lengths.
 */
export const styleOf = ({ values }: Call, others: readonly string[]): LengthStyle => {
  const lengths = [...values].flatMap(([name, texts]) => (others.includes(name) ? [] : texts));
  const given = lengths.filter((text) => text !== '');
  return given.length > 0 && given.every((text) => metric.test(text.trim()))
    ? { system: 'mm', fraction: 16 }
    : inchStyle;
};
