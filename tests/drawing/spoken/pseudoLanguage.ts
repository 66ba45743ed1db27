import { speakBy } from '../../../src/phrases/phrase.ts';

/** A language that says every phrase in English with each of its words in «», letters that the font has. */
export const speakPseudo = (): void =>
  speakBy((key) =>
    key
      .slice(key.indexOf('|') + 1)
      .replace(/\{\d+\}|\p{L}+/gu, (piece) => (piece.startsWith('{') ? piece : `«${piece}»`)),
  );

/** What of a text is in no phrase; a phrase may be cut at either end of it. */
const outside = (text: string): string => text.replace(/^[^«»]*»|«[^«»]*(?:»|$)/gu, '|');

/** The runs of words of a text that are in no phrase, each in small letters; lone letters are names. */
export const unphrased = (text: string): string[] =>
  outside(text)
    .toLowerCase()
    .split(/[^\p{L}\s]+/u)
    .map((run) => run.trim().replace(/\s+/g, ' '))
    .filter((run) => /\p{L}{2}/u.test(run));
