import type { OrientedBox } from '../../geometry/orientedBox.ts';
import type { Atom, Text } from '../atom.ts';

/** Letters that lead a reader who touches them to an anchor of the set. */
export interface Lead {
  readonly to: string;
  readonly box: OrientedBox<'paper'>;
}

/** Letters that found their places, the lines that go with them, and what found none. */
export interface Lettered {
  readonly lines: readonly Atom[];
  readonly texts: readonly Text[];
  readonly left: readonly string[];
  readonly leads?: readonly Lead[];
}

/** Nothing lettered. */
export const unlettered = (...left: readonly string[]): Lettered => ({
  lines: [],
  texts: [],
  left,
});
