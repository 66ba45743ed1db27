import type { AlternativeId } from '../../site/ids.ts';
import type { Site } from '../../site/site.ts';
import type { Layout } from '../layout.ts';
import type { Load } from '../load/load.ts';

/** A yard that is compared with others: what it is called, and what follows from it. */
export interface Candidate {
  /** Empty for a yard as it is drawn, which has no name of its own beside its alternatives. */
  readonly label: string;
  /** The alternative that it is built as; null as it is drawn. */
  readonly alternative: AlternativeId | null;
  readonly site: Site;
  readonly layout: Layout;
  readonly load: Load;
}

/** A candidate of which nothing is worked out yet. */
export type Named = Pick<Candidate, 'label' | 'alternative' | 'site'>;
