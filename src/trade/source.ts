/**
 * Where a figure comes from, in one line that sheets print, and how far it can be relied on:
 * `published` was read in the document named; `practice` is common practice without a published
 * source; `memory` is believed to be in the document named and was not read there; `derived` is
 * worked out from the figures named.
 */
export interface Source {
  readonly text: string;
  readonly status: 'published' | 'practice' | 'memory' | 'derived';
}
