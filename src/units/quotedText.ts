/** The most characters of a text that a line quotes, and that a length or an angle may have. */
export const longestText = 40;

/**
 * Text as one line may quote it: blanks and line ends are single blanks, control characters and
 * invisible marks are shown as �, and what is past 40 characters as an ellipsis.
 */
export const quotedText = (text: string): string => {
  const line = text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, '�');
  const signs = [...line];
  return signs.length > longestText ? `“${signs.slice(0, longestText).join('')}…”` : `“${line}”`;
};
