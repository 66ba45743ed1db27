import { useId, useState } from 'react';
import { plainDeed } from '../help/keys/keyRow.ts';
import { fieldKeys } from './fieldKeys.ts';

interface Props {
  readonly label: string;
  /** The last good value, as written. */
  readonly value: string;
  /** Takes what was typed; gives back null, or the one line that says what is wrong with it. */
  readonly onEnter: (text: string) => string | null;
  /** Which keys a phone shows; `none` where the page has its own. */
  readonly keys?: 'text' | 'decimal' | 'none';
  readonly lines?: number;
  readonly note?: string;
}

interface Typing {
  readonly text: string;
  readonly fault: string | null;
}

/**
 * A value with its name. What is typed counts on Enter or when the field is left; Escape brings the
 * last good value back, and so does leaving a field whose text was refused and then put right.
 */
export const TextField = ({ label, value, onEnter, keys = 'text', lines = 1, note }: Props) => {
  const id = useId();
  const [typing, setTyping] = useState<Typing | null>(null);
  const enter = () => {
    if (typing === null) return;
    const fault = typing.text === value ? null : onEnter(typing.text);
    setTyping(fault === null ? null : { text: typing.text, fault });
  };
  const fault = typing?.fault ?? null;
  const Box = lines > 1 ? 'textarea' : 'input';
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <Box
        id={id}
        value={typing?.text ?? value}
        inputMode={keys}
        autoComplete="off"
        spellCheck={false}
        {...(lines > 1 && { rows: lines })}
        aria-invalid={fault !== null}
        aria-describedby={fault !== null || note !== undefined ? `${id}-said` : undefined}
        onChange={(event) => setTyping({ text: event.target.value, fault: null })}
        onBlur={enter}
        onKeyDown={(event) => {
          const deed = plainDeed(fieldKeys, event.key);
          if (deed === 'enter' && lines === 1) enter();
          if (deed !== 'back' || typing === null) return;
          // it takes back what was typed, and not also the sheet that the field is on
          event.preventDefault();
          setTyping(null);
        }}
      />
      {fault !== null ? (
        <p id={`${id}-said`} className="fault" role="alert">
          {fault}
        </p>
      ) : (
        note !== undefined && (
          <p id={`${id}-said`} className="note">
            {note}
          </p>
        )
      )}
    </div>
  );
};
