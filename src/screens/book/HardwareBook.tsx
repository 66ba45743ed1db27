import './book.css';
import { phrase } from '../../phrases/phrase.ts';
import type { Hardware } from '../../site/hardware.ts';
import type { PartPlan } from '../../store/plans.ts';
import { useBench } from '../bench.ts';
import { SheetOver } from '../frame/SheetOver.tsx';
import { BookList } from './BookList.tsx';
import { BookUndo } from './BookUndo.tsx';
import { HardwareFiles } from './HardwareFiles.tsx';

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
  <SheetOver title={phrase`Hardware book`} onClose={onClose}>
    <p className="note">{phrase`Kept on this device for every site. Sizes that are assumed are generic: measure the parts on order, one by one, and type what you read.`}</p>
    <BookUndo book={useBench().book} />
    <BookList kinds={kinds} onTake={onTake} />
    <HardwareFiles />
  </SheetOver>
);
