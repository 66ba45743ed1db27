import type { Inches } from '../../../units/inches.ts';
import { useSite } from '../../bench.ts';
import { MaybeLengthField } from '../../fields/MaybeLengthField.tsx';
import { underFinger } from './underFinger.ts';

interface Props {
  readonly label: string;
  readonly value: Inches | null;
  readonly onEnter: (value: Inches | null) => string | null;
  readonly note?: string;
}

/** A length that the crew found. Under a finger the keys of a tape come up for it, not a keyboard. */
export const FoundField = (props: Props) => (
  <MaybeLengthField {...props} style={useSite().lengths} keys={underFinger() ? 'none' : 'text'} />
);
