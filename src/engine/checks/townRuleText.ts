import type { Site } from '../../site/site.ts';
import type { TownRule } from '../../site/townRule.ts';
import { fineStyle } from '../../units/fineStyle.ts';
import { formatLength } from '../../units/formatLength.ts';
import { oneLine } from './names.ts';
import { joined, phrase } from '../../phrases/phrase.ts';
import { measureWords } from '../../engine/checks/measureWords.ts';

/** What a rule of a town asks, and where it says so, each on one line. */
export interface TownRuleText {
  readonly asks: string;
  readonly source: string;
}

/**
 * A rule of a town as flags, sheets and screens tell it, its limit in the style of the site: measure and
 * limit, then words; of a source that nobody told that is said.
 */
export const townRuleText = (
  { measure, limit, words, source }: TownRule,
  lengths: Site['lengths'],
): TownRuleText => {
  const most =
    limit === null ? phrase`nobody has said what` : formatLength(limit, fineStyle(lengths));
  const texts = [measure === null ? '' : phrase`${measureWords[measure]} ${most}`, oneLine(words)];
  return {
    asks: joined(
      texts.filter((text) => text !== ''),
      '; ',
    ),
    source: oneLine(source) || phrase`as the company has it, no source told`,
  };
};
