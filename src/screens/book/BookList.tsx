import { useState } from 'react';
import { phrase } from '../../phrases/phrase.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId } from '../../site/ids.ts';
import type { PartPlan } from '../../store/plans.ts';
import { useBook, useSite } from '../bench.ts';
import { genericBook } from '../plans/genericBook.ts';
import { BookEntry } from './BookEntry.tsx';
import { entriesOf } from './entriesOf.ts';
import { freshId } from './freshId.ts';
import { kindNames, partLine } from './partWords.ts';
import { useBookChange } from './useBookChange.ts';

interface Props {
  readonly kinds: readonly Hardware['kind'][];
  readonly onTake?: ((part: PartPlan) => void) | undefined;
}

/** A part of a kind to begin with: the first generic one, under a name that asks for another. */
const beginning = (kind: Hardware['kind']): Hardware | undefined => {
  const generic = Object.values(genericBook).find((part) => part.kind === kind);
  return generic && { ...generic, label: kindNames[kind].fresh, remark: '' };
};

/** The parts of the book by kind, with what is searched for in their name, remark or line. */
export const BookList = ({ kinds, onTake }: Props) => {
  const book = useBook();
  const { lengths } = useSite();
  const change = useBookChange();
  const [search, setSearch] = useState('');
  const [open, setOpen] = useState<HardwareId | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const put = (label: string, part: Hardware | undefined) => {
    if (part === undefined) return;
    const id = freshId('hardware');
    const refused = change(label, { [id]: part });
    setFault(refused);
    if (refused !== null) return;
    // it has to be seen to be filled in
    setSearch('');
    setOpen(id);
  };
  const found = entriesOf(book, search, (part) => partLine(part, lengths));
  return (
    <>
      <div className="field">
        <label htmlFor="book-search">{phrase`Search`}</label>
        <input
          id="book-search"
          type="search"
          value={search}
          autoComplete="off"
          onChange={(event) => setSearch(event.target.value)}
        />
      </div>
      {fault !== null && (
        <p className="fault" role="alert">
          {fault}
        </p>
      )}
      {kinds.map((kind) => {
        const own = found.filter(({ hardware }) => hardware.kind === kind);
        const { all, add } = kindNames[kind];
        return (
          <section key={kind} aria-label={all}>
            <div className="entry-head">
              <h3>{all}</h3>
              <button type="button" onClick={() => put(add, beginning(kind))}>
                {add}
              </button>
            </div>
            {own.length === 0 && <p className="note">{phrase`Nothing here by that name.`}</p>}
            <ul className="plain">
              {own.map((entry) => (
                <BookEntry
                  key={entry.id}
                  entry={entry}
                  open={open === entry.id}
                  onOpen={() => setOpen(open === entry.id ? null : entry.id)}
                  onCopy={() => {
                    const { hardware } = entry;
                    const label = phrase`${hardware.label}, copy`;
                    put(phrase`Copy ${hardware.label}`, { ...hardware, label });
                  }}
                  onDelete={() =>
                    void change(phrase`Delete ${entry.hardware.label}`, { [entry.id]: null })
                  }
                  onTake={onTake && (() => onTake(entry))}
                />
              ))}
            </ul>
          </section>
        );
      })}
    </>
  );
};
