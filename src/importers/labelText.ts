/** The longest that a name on a site may be. */
const longest = 200;

/** A text of a file as one line that a site can hold: no control marks, 200 characters at most. */
export const labelText = (text: string): string =>
  text
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029\s]+/gu, ' ')
    .trim()
    .slice(0, longest)
    // the first half of a sign that was cut in two
    .replace(/[\uD800-\uDBFF]$/, '')
    .trim();
