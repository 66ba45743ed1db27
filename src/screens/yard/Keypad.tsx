import { phrase } from '../../phrases/phrase.ts';
import { afterKey, keyNames, keypadRows } from './keypad.ts';

interface Props {
  readonly onKey: (change: (text: string) => string) => void;
}

/** The pad's own keyboard for lengths: figures, feet, inches and fractions. */
export const Keypad = ({ onKey }: Props) => (
  <div className="keypad" role="group" aria-label={phrase`Keys for lengths`}>
    {keypadRows.flat().map((key) => (
      <button
        key={key}
        type="button"
        aria-label={keyNames[key]}
        // the field keeps the focus
        onPointerDown={(event) => event.preventDefault()}
        onClick={() => onKey((text) => afterKey(text, key))}
      >
        {key === 'back' ? '⌫' : key}
      </button>
    ))}
  </div>
);
