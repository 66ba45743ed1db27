import { useId } from 'react';

interface Props<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly choices: readonly { readonly value: Value; readonly label: string }[];
  readonly onChoose: (value: Value) => void;
  /** The one line that says why what was chosen last is not taken; the value stays. */
  readonly fault?: string | null;
}

/** One of several. */
export const ChoiceField = <Value extends string>(props: Props<Value>) => {
  const { label, value, choices, onChoose, fault = null } = props;
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : `${id}-said`}
        onChange={(event) => {
          const chosen = choices.find((choice) => choice.value === event.target.value);
          if (chosen !== undefined) onChoose(chosen.value);
        }}
      >
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
      {fault !== null && (
        <p id={`${id}-said`} className="fault" role="alert">
          {fault}
        </p>
      )}
    </div>
  );
};
