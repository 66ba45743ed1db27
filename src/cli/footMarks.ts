/** What a shell leaves of `54' --max 10'`: one word without its marks. */
const joined = /^(\d+(?:\.\d+)?) --([a-z][a-z-]*)[ =](\d+(?:\.\d+)?)$/;

/**
 * Puts back two foot marks that a shell took for quotes. Of `--length 54' --max 10'` it makes
 * `--length` and the one word `54 --max 10`: a quoted part that begins behind the first figure and
 * ends behind the last. Every other word stays as it is.
 */
export const withFootMarks = (words: readonly string[]): string[] =>
  words.flatMap((word) => {
    const found = joined.exec(word);
    return found === null ? [word] : [`${found[1]}'`, `--${found[2]}`, `${found[3]}'`];
  });
