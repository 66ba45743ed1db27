import { joined, phrase } from '../../phrases/phrase.ts';
import type { ImportLines } from './importLines.ts';

interface Props {
  readonly name: string;
  readonly lines: ImportLines;
  readonly onTake: () => void;
  readonly onLeave: () => void;
}

const Lines = ({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) =>
  lines.length > 0 && (
    <>
      <h4>
        {title}: {lines.length}
      </h4>
      <ul className="import-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );

/** What a file would add to the book and change in it, and what of it cannot be taken. */
export const ImportPreview = ({ name, lines, onTake, onLeave }: Props) => {
  const { added, changed, refused, same, leftOut } = lines;
  const count = added.length + changed.length;
  return (
    <div className="import" role="group" aria-label={phrase`What ${name} would do`}>
      <h3>{name}</h3>
      <Lines title={phrase`Added`} lines={added} />
      <Lines title={phrase`Changed`} lines={changed} />
      <Lines title={phrase`Refused`} lines={refused} />
      {same > 0 && <p>{phrase`In the book as they are: ${same}.`}</p>}
      {leftOut.length > 0 && (
        <p>{phrase`The book has no place for these columns: ${joined(leftOut, ', ')}.`}</p>
      )}
      <div className="choices">
        <button type="button" className="chief" disabled={count === 0} onClick={onTake}>
          {count === 0 ? phrase`Nothing to take` : phrase`Take ${count} into the book`}
        </button>
        <button type="button" onClick={onLeave}>{phrase`Leave it`}</button>
      </div>
    </div>
  );
};
