/** Every text in a value, at any depth. */
export const textsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsIn);
};

/** Texts as runs of words in small letters, so that one can be found in them; `|` is between any two. */
export const corpusOf = (texts: readonly string[]): string =>
  `|${texts
    .join('|')
    .toLowerCase()
    .replace(/[^\p{L}\s]+/gu, '|')
    .replace(/\s+/g, ' ')
    .replace(/ ?\| ?/g, '|')}|`;
