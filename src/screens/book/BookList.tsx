import { useState } from 'react';
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
  return generic && { ...generic, label: `New ${kindNames[kind][0]}`, remark: '' };
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
        <label htmlFor="book-search">Search</label>
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
        const [one, all] = kindNames[kind];
        return (
          <section key={kind} aria-label={all}>
            <div className="entry-head">
              <h3>{all}</h3>
              <button type="button" onClick={() => put(`Add ${one}`, beginning(kind))}>
                Add {one}
              </button>
            </div>
            {own.length === 0 && <p className="note">Nothing here by that name.</p>}
            <ul className="plain">
              {own.map((entry) => (
                <BookEntry
                  key={entry.id}
                  entry={entry}
                  open={open === entry.id}
                  onOpen={() => setOpen(open === entry.id ? null : entry.id)}
                  onCopy={() => {
                    const { hardware } = entry;
                    const label = `${hardware.label}, copy`;
                    put(`Copy ${hardware.label}`, { ...hardware, label });
                  }}
                  onDelete={() =>
                    void change(`Delete ${entry.hardware.label}`, { [entry.id]: null })
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
