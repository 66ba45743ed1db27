import { phrase } from '../../../phrases/phrase.ts';
import type { Source } from '../../../trade/source.ts';

/** One reason for a figure, in plain words, and where it comes from. */
export interface Reason {
  readonly says: string;
  readonly source: string;
}

/** Of what follows from figures that are named beside it. */
export const workedOut = phrase`worked out from the figures named`;

/** Of what a person chose for a build, whatever is published. */
export const ofTheBuild = phrase`as the build has it`;

/** Of what is done so and nobody has published. */
export const practice = phrase`common practice, no published source`;

/** Who publishes the figure that a build has: the first row that has the very same; else the build itself. */
export const publishedOf = <Row extends { readonly source: Source }>(
  rows: readonly Row[],
  is: (row: Row) => boolean,
): string => rows.find(is)?.source.text ?? ofTheBuild;
