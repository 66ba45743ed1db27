import type { Hardware } from '../../site/hardware.ts';
import type { HardwareId } from '../../site/ids.ts';
import type { BookChange } from '../../store/bookStore.ts';
import { useBench } from '../bench.ts';
import { changeBook } from './changeBook.ts';

/** Changes the hardware book under the label that its undo shows: null, or the one line why not. */
export const useBookChange = (): ((
  label: string,
  change: BookChange<HardwareId, Hardware>,
) => string | null) => {
  const { book } = useBench();
  return (label, change) => changeBook(book, label, change);
};
