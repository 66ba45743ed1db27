import { useId } from 'react';

interface Props {
  readonly label: string;
  readonly value: string;
  readonly fault: string | null;
  readonly keys?: 'text' | 'numeric';
  readonly onType: (text: string) => void;
}

/** What is typed of a thing that is not there before its key is pressed; its fault is told then. */
export const DraftField = ({ label, value, fault, keys = 'text', onType }: Props) => {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        value={value}
        inputMode={keys}
        autoComplete="off"
        spellCheck={false}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : `${id}-said`}
        onChange={({ target }) => onType(target.value)}
      />
      {fault !== null && (
        <p id={`${id}-said`} className="fault" role="alert">
          {fault}
        </p>
      )}
    </div>
  );
};
