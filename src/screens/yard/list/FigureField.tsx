import { TextField } from '../../fields/TextField.tsx';

interface Props {
  readonly label: string;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly note?: string;
}

/** A figure of a form: what is typed is read when the form is sent, and refused there. */
export const FigureField = ({ label, text, onText, ...rest }: Props) => (
  <TextField
    {...rest}
    label={label}
    value={text}
    onEnter={(typed) => {
      onText(typed.trim());
      return null;
    }}
  />
);
