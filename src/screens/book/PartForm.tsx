import { phrase } from '../../phrases/phrase.ts';
import type { Hardware } from '../../site/hardware.ts';
import { measuredPart } from '../../site/measuredPart.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { SizeField } from '../fields/SizeField.tsx';
import { sizeText } from '../fields/sizeText.ts';
import { TextField } from '../fields/TextField.tsx';
import { MaybeLengthField } from '../fields/MaybeLengthField.tsx';
import { today } from '../today.ts';
import { changedPart } from './changedPart.ts';
import { FitFields } from './FitFields.tsx';
import { partWords } from './partWords.ts';
import { ReadingsField } from './ReadingsField.tsx';

interface Props {
  readonly part: Hardware;
  readonly style: LengthStyle;
  /** Takes the changed part; gives back null, or the one line for the field. */
  readonly onChange: (part: Hardware) => string | null;
}

const spreads = [
  { value: 'uncertain', label: phrase`Not sure: somewhere between` },
  { value: 'adjustable', label: phrase`Can be set anywhere between` },
] as const;

const origins = [
  { value: 'measured', label: phrase`Measured` },
  { value: 'book', label: phrase`Hardware book` },
  { value: 'assumed', label: phrase`Assumed` },
] as const;

const ends = ['low', 'planned', 'high'] as const;

/** Everything that is known of a part, each in its field. */
export const PartForm = (props: Props) => (
  <>
    <Sizes {...props} />
    <Fits {...props} />
    <Known {...props} />
  </>
);

const useChange = ({ part, style, onChange }: Props) => {
  const words = partWords(part.kind, style);
  return (fields: Partial<Hardware>): string | null => {
    const changed = changedPart(part, fields, words);
    return changed.fault ?? onChange(changed.part);
  };
};

const Sizes = (props: Props) => {
  const { part, style } = props;
  const change = useChange(props);
  const words = partWords(part.kind, style);
  if (part.kind === 'closer') return null;
  return (
    <>
      <div className="triple">
        {ends.map((end) => (
          <SizeField
            key={end}
            label={words[end]}
            value={part.takes[end]}
            style={style}
            onEnter={(value) => change({ takes: { ...part.takes, [end]: value } })}
          />
        ))}
      </div>
      <ReadingsField
        part={part}
        style={style}
        onEnter={(readings) => change(measuredPart(part, readings, today()) ?? { readings: [] })}
      />
      {part.kind === 'hinge' && (
        <ChoiceField
          label={phrase`Its size is`}
          value={part.spread}
          choices={spreads}
          onChoose={(spread) => void change({ spread })}
        />
      )}
    </>
  );
};

const Fits = (props: Props) => {
  const { part, style } = props;
  const { fits, kind, pin } = part;
  const change = useChange(props);
  const words = partWords(kind, style);
  return (
    <div className="pair">
      <FitFields
        labels={[words.postLow, words.postHigh]}
        range={fits.post}
        style={style}
        onEnter={(post) => change({ fits: { ...fits, post } })}
      />
      <FitFields
        labels={[words.frameLow, words.frameHigh]}
        range={fits.frame}
        style={style}
        onEnter={(frame) => change({ fits: { ...fits, frame } })}
      />
      {kind === 'hinge' && (
        <MaybeLengthField
          label={words.pin}
          value={pin}
          style={style}
          write={sizeText}
          onEnter={(value) => change({ pin: value })}
        />
      )}
    </div>
  );
};

const Known = (props: Props) => {
  const { part } = props;
  const change = useChange(props);
  return (
    <>
      <div className="pair">
        <ChoiceField
          label={phrase`Known from`}
          value={part.from}
          choices={origins}
          onChoose={(from) => void change({ from })}
        />
        <TextField
          label={phrase`Day`}
          value={part.on}
          onEnter={(on) => change({ on: on.trim() })}
        />
      </div>
      <TextField
        label={phrase`Remark`}
        lines={2}
        value={part.remark}
        onEnter={(remark) => change({ remark })}
      />
    </>
  );
};
