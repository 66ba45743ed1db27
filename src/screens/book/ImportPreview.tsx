import type { BookImport } from '../../importers/book/bookFromCsv.ts';
import type { Parts } from '../../site/parts.ts';
import { useSite } from '../bench.ts';
import { changeLine } from './importLines.ts';
import { partLine } from './partWords.ts';

interface Props {
  readonly name: string;
  readonly found: BookImport;
  readonly book: Parts;
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
export const ImportPreview = ({ name, found, book, onTake, onLeave }: Props) => {
  const { lengths } = useSite();
  const { added, changed, same, refused, leftOut } = found;
  const count = added.length + changed.length;
  const addedLines = added.map(
    ({ line, hardware }) => `line ${line}: ${hardware.label}: ${partLine(hardware, lengths)}`,
  );
  return (
    <div className="import" role="group" aria-label={`What ${name} would do`}>
      <h3>{name}</h3>
      <Lines title="Added" lines={addedLines} />
      <Lines title="Changed" lines={changed.map((row) => changeLine(row, book))} />
      <Lines title="Refused" lines={refused.map(({ line, reason }) => `line ${line}: ${reason}`)} />
      {same > 0 && <p>In the book as they are: {same}.</p>}
      {leftOut.length > 0 && <p>The book has no place for these columns: {leftOut.join(', ')}.</p>}
      <div className="choices">
        <button type="button" className="chief" disabled={count === 0} onClick={onTake}>
          {count === 0 ? 'Nothing to take' : `Take ${count} into the book`}
        </button>
        <button type="button" onClick={onLeave}>
          Leave it
        </button>
      </div>
    </div>
  );
};
