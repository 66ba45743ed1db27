import type { Opening } from '../../engine/opening.ts';
import { writer } from '../../engine/set/setCase.ts';
import { setOf } from '../../engine/set/setOf.ts';
import type { Gate } from '../../site/gate.ts';
import type { Site } from '../../site/site.ts';
import { clearWords } from './clearWords.ts';
import { verdictWords } from './verdictWords.ts';

/** What comes of posts that were set, in few words, for a crew at arm's length. */
export interface SetWords {
  readonly level: 'holds' | 'ask' | 'stop';
  /** The verdict. */
  readonly words: string;
  /** What the posts leave, a sentence. */
  readonly gap: string;
}

/**
 * What is said of a gate as it was set: the verdict and the gap, or of a gap without a gate how it
 * compares with what was wanted. Null where nothing was set.
 */
export const setWords = (
  site: Site,
  gate: Gate,
  { target }: Pick<Opening, 'target'>,
): SetWords | null => {
  const write = writer({ site });
  if (gate.way.kind === 'gap') {
    return gate.asSet === null ? null : clearWords(gate.asSet, target, write);
  }
  const set = setOf(site, gate);
  return set === null ? null : verdictWords(set, write);
};
