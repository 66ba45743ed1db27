import type { Atom, Text } from '../atom.ts';

/** Letters that found their places, the lines that go with them, and what found none. */
export interface Lettered {
  readonly lines: readonly Atom[];
  readonly texts: readonly Text[];
  readonly left: readonly string[];
}

/** Nothing lettered. */
export const unlettered = (...left: readonly string[]): Lettered => ({
  lines: [],
  texts: [],
  left,
});
