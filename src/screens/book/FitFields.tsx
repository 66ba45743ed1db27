import type { Hardware } from '../../site/hardware.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { sizeText } from '../fields/sizeText.ts';
import { MaybeLengthField } from '../fields/MaybeLengthField.tsx';

type Range = Hardware['fits']['post'];

interface Props {
  readonly labels: readonly [low: string, high: string];
  readonly range: Range;
  readonly style: LengthStyle;
  readonly onEnter: (range: Range) => string | null;
}

const ends = ['low', 'high'] as const;

/**
 * The outside diameters that a part fits. The first end that is said stands for both; an end that is
 * emptied takes both away.
 */
export const FitFields = ({ labels, range, style, onEnter }: Props) =>
  ends.map((end, n) => (
    <MaybeLengthField
      key={end}
      label={labels[n] ?? ''}
      value={range?.[end] ?? null}
      style={style}
      write={sizeText}
      onEnter={(value) =>
        onEnter(value === null ? null : { ...(range ?? { low: value, high: value }), [end]: value })
      }
    />
  ));
