import { isMetric } from '../../units/isMetric.ts';
import type { LoadLine } from '../../engine/loadLine.ts';
import { formatLength } from '../../units/formatLength.ts';
import { inches } from '../../units/inches.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { phrase } from '../../phrases/phrase.ts';

/** How many of a line of the load list there are: pieces, a length (inches) or a volume (cubic feet) in the site's units. */
export const amountText = (
  count: number,
  { unit }: Pick<LoadLine, 'unit'>,
  style: LengthStyle,
): string => {
  if (unit === 'length') return formatLength(inches(count), style);
  if (unit === 'cubic feet') {
    const metric = isMetric(style.system);
    // 1 cu ft is 0.3048³ cubic metres
    return metric ? `${(count * 0.3048 ** 3).toFixed(2)} m³` : phrase`${count.toFixed(1)} cu ft`;
  }
  return String(count);
};
