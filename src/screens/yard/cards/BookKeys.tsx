import { useState } from 'react';
import { changeHardware } from '../../../site/edits/changeHardware.ts';
import type { Hardware } from '../../../site/hardware.ts';
import type { HardwareId } from '../../../site/ids.ts';
import { kept } from '../../../site/kept.ts';
import { partFault } from '../../../site/partFault.ts';
import type { PartPlan } from '../../../store/plans.ts';
import { useBench, useBook, useSite } from '../../bench.ts';
import { freshId } from '../../book/freshId.ts';
import { HardwareBook } from '../../book/HardwareBook.tsx';
import { partLine, partWords } from '../../book/partWords.ts';
import { useBookChange } from '../../book/useBookChange.ts';
import { fromBook } from '../../plans/fromBook.ts';
import { useDo } from './useEdit.ts';
import { phrase } from '../../../phrases/phrase.ts';

interface Props {
  readonly id: HardwareId;
  readonly part: Hardware;
  readonly kinds: readonly Hardware['kind'][];
  readonly onChoose: (part: PartPlan) => void;
}

/** A part of the site and the hardware book: chosen from it, put in it, or its figures taken. */
export const BookKeys = ({ id, part, kinds, onChoose }: Props) => {
  const [open, setOpen] = useState(false);
  return (
    <>
      <BookSays id={id} part={part} />
      <button type="button" onClick={() => setOpen(true)} aria-haspopup="dialog">
        {phrase`From the book`}
      </button>
      {open && (
        <HardwareBook
          kinds={kinds}
          onClose={() => setOpen(false)}
          onTake={({ id: chosen, hardware }) => {
            setOpen(false);
            onChoose({ id: chosen, hardware: fromBook(hardware) });
          }}
        />
      )}
    </>
  );
};

const BookSays = ({ id, part }: Pick<Props, 'id' | 'part'>) => {
  const { session } = useBench();
  const { lengths } = useSite();
  const book = useBook();
  const make = useDo();
  const change = useBookChange();
  const found = Object.hasOwn(book, id) ? book[id] : undefined;
  const own = found?.kind === part.kind ? found : undefined;
  const theirs = own && fromBook(own);
  // what was measured for this site and put in the book is no other figure than the book's
  if ([own, theirs].some((one) => one !== undefined && kept(one, part) === one)) {
    return <p className="note">{phrase`As the hardware book has it.`}</p>;
  }
  const put = () => {
    const fault =
      partFault(part, partWords(part.kind, lengths)) ??
      change(phrase`Put ${part.label} in the book`, {
        [found === own ? id : freshId('hardware')]: part,
      });
    session.setState({ say: fault ?? phrase`In the hardware book: ${part.label}` });
  };
  return (
    <>
      {own !== undefined && theirs !== undefined && (
        <>
          <p className="note">
            {phrase`The hardware book has it otherwise: ${own.label}. ${partLine(own, lengths)}.`}
          </p>
          <button
            type="button"
            onClick={() =>
              make(phrase`Take the book’s figures of ${part.label}`, (was) =>
                changeHardware(was, id, theirs),
              )
            }
          >
            {phrase`Take the book’s figures`}
          </button>
        </>
      )}
      <button type="button" onClick={put}>
        {own === undefined ? phrase`Put in the book` : phrase`Put these in the book`}
      </button>
    </>
  );
};
