import { phrase } from '../../phrases/phrase.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import type { Inches } from '../../units/inches.ts';
import { parseLengths } from '../../units/parseLengths.ts';
import { TextField } from '../fields/TextField.tsx';
import { smallUnit } from '../fields/smallUnit.ts';
import { partWords } from './partWords.ts';

interface Props {
  readonly part: Hardware;
  readonly style: LengthStyle;
  /** None when the field is emptied. */
  readonly onEnter: (readings: readonly Inches[]) => string | null;
}

/** What was read off each part on order: a list, from which follows what the part takes. */
export const ReadingsField = ({ part, style, onEnter }: Props) => {
  const { write, readings: label } = partWords(part.kind, style);
  return (
    <TextField
      label={label}
      value={part.readings.map(write).join(', ')}
      note={
        part.kind === 'hinge'
          ? phrase`Such as 1 3/4, 1 7/8, 2: the largest is planned with.`
          : phrase`The smallest and the largest gap at which it caught.`
      }
      onEnter={(text) => {
        if (text.trim() === '') return onEnter([]);
        const read = parseLengths(text, smallUnit(style.system));
        if (!read.ok) return `${label}: ${read.reason}`;
        const below = read.value.find((length) => !(length > 0));
        if (below !== undefined)
          return phrase`${label}: expected more than 0, found ${write(below)}`;
        return onEnter(read.value);
      }}
    />
  );
};
