import './book.css';
import type { Hardware } from '../../site/hardware.ts';
import type { PartPlan } from '../../store/plans.ts';
import { useBench } from '../bench.ts';
import { SheetOver } from '../frame/SheetOver.tsx';
import { useStored } from '../useStored.ts';
import { BookFiles } from './BookFiles.tsx';
import { BookList } from './BookList.tsx';

interface Props {
  /** Every kind where it is not given. */
  readonly kinds?: readonly Hardware['kind'][];
  /** Where a part is being chosen for a gate. */
  readonly onTake?: (part: PartPlan) => void;
  readonly onClose: () => void;
}

const allKinds: readonly Hardware['kind'][] = ['hinge', 'latch', 'drop rod', 'closer'];

/** The company's own hinges, latches, drop rods and closers, laid over the screen. */
export const HardwareBook = ({ kinds = allKinds, onTake, onClose }: Props) => (
  <SheetOver title="Hardware book" onClose={onClose}>
    <p className="note">
      Kept on this device for every site. Sizes that are assumed are generic: measure the parts on
      order, one by one, and type what you read.
    </p>
    <BookUndo />
    <BookList kinds={kinds} onTake={onTake} />
    <BookFiles />
  </SheetOver>
);

const BookUndo = () => {
  const { book } = useBench();
  const past = useStored(book, (state) => state.past);
  const future = useStored(book, (state) => state.future);
  const { undo, redo } = book.getState();
  const [back, again] = [past.at(-1)?.label, future[0]?.label];
  return (
    <div className="book-undo" role="group" aria-label="Undo in the book">
      <button type="button" disabled={back === undefined} onClick={undo}>
        Undo {back !== undefined && <small>{back}</small>}
      </button>
      <button type="button" disabled={again === undefined} onClick={redo}>
        Redo {again !== undefined && <small>{again}</small>}
      </button>
    </div>
  );
};
