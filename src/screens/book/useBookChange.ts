import type { BookChange } from '../../store/bookStore.ts';
import { useBench } from '../bench.ts';

/** Changes the hardware book under the label that its undo shows: null, or the one line why not. */
export const useBookChange = (): ((label: string, change: BookChange) => string | null) => {
  const { book } = useBench();
  return (label, change) => {
    try {
      book.getState().change(label, change);
      return null;
    } catch (error) {
      if (error instanceof RangeError) return error.message;
      throw error;
    }
  };
};
