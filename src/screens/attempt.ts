import type { Site } from '../site/site.ts';
import type { Bench } from './bench.ts';

/** An edit of the present document, under the label that undo shows. */
export interface Edit {
  readonly label: string;
  readonly on: (site: Site) => Site;
}

/**
 * Makes an edit; an edit that refuses its values leaves the document as it is, and its one line is
 * given back. Null when it was made.
 */
export const attempt = ({ site }: Bench, { label, on }: Edit): string | null => {
  try {
    site.getState().commit(on(site.getState().history.present.site), label);
    return null;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
};
