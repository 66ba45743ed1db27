import { useState, type ReactNode } from 'react';

interface Props {
  readonly label: string;
  readonly action: string;
  /** Does it; gives back null, or the one line that says why it was not done. */
  readonly onDo: () => string | null;
  readonly children?: ReactNode;
}

/** A few fields and the key that does what they say; what is refused is told under them. */
export const WordsForm = ({ label, action, onDo, children }: Props) => {
  const [fault, setFault] = useState<string | null>(null);
  return (
    <form
      className="stack"
      aria-label={label}
      onSubmit={(event) => {
        event.preventDefault();
        setFault(onDo());
      }}
    >
      {children}
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      <button type="submit">{action}</button>
    </form>
  );
};
