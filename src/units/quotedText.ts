/** The most characters of a text that a line quotes, and that a length or an angle may have. */
export const longestText = 40;

/** Characters of a text of which any may come among the first 40 once its blanks are single. */
const longestLooked = 2000;

/**
 * Text as one line may quote it: blanks and line ends are single blanks, control characters and
 * invisible marks are shown as �, and what is past 40 characters as an ellipsis.
 */
export const quotedText = (text: string): string => {
  // what is far behind the 40 is not looked at: a text may be a whole file
  const line = text
    .trimStart()
    .slice(0, longestLooked)
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, '�');
  const signs = [...line];
  return signs.length > longestText ? `“${signs.slice(0, longestText).join('')}…”` : `“${line}”`;
};
