import { phrase, phraseOf } from '../../phrases/phrase.ts';
import { soundTownRule } from '../../site/soundTownRule.ts';
import type { TownRule } from '../../site/townRule.ts';
import { townRuleFault } from '../../site/townRuleFault.ts';
import type { LengthStyle } from '../../units/lengthStyle.ts';
import { parseLength } from '../../units/parseLength.ts';
import { read, unread, type Parsed } from '../../units/parsed.ts';
import { quotedText } from '../../units/quotedText.ts';
import { smallUnit } from '../fields/smallUnit.ts';

/** A rule as it is being typed: its limit is still text. */
export type TypedRule = Omit<TownRule, 'limit'> & { readonly limit: string };

const labels = { town: phrase`Town`, limit: phrase`Limit`, words: phrase`In words` } as const;

/** The rule that was typed, a bare limit in inches or mm; unread with the one line for the form. */
export const typedRule = (typed: TypedRule, { system }: LengthStyle): Parsed<TownRule> => {
  const blank = typed.limit.trim() === '' || typed.measure === null;
  const limit = blank ? read(null) : parseLength(typed.limit, smallUnit(system));
  if (!limit.ok) return unread(phraseOf('form')`Limit: ${limit.reason}`);
  if (limit.value !== null && limit.value < 0)
    return unread(phraseOf('form')`Limit: expected 0 or more, found ${quotedText(typed.limit)}`);
  const { town, words, source } = typed;
  const rule = {
    ...typed,
    town: town.trim(),
    words: words.trim(),
    source: source.trim(),
    limit: limit.value,
  };
  const fault = townRuleFault(rule);
  if (fault !== null) return unread(phrase`${labels[fault.field]}: expected ${fault.expected}`);
  return soundTownRule.safeParse(rule).success
    ? read(rule)
    : unread(phrase`Expected 200 characters at most for town and source, 4000 in words`);
};
