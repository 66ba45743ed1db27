/** Written as %% and a letter in a DXF text; lines over and under it are left out. */
const signs: Readonly<Record<string, string>> = { d: '°', p: '±', c: '⌀', '%': '%' };

/** The longest that a note on a site may be. */
const longest = 4000;

/**
 * Each mark of lettering: an escaped sign, a sign by its number, a new line, a blank that does not
 * break, a stacked fraction, what ends in a semicolon, lines over and under, groups, signs by %%.
 */
const mark =
  /\\([\\{}])|\\U\+([0-9A-Fa-f]{4})|(\\P)|(\\~)|\\S([^;]*?)[#^/]([^;]*);|\\[ACcFfHhQTWp][^;\\{}]*;|\\[LlOoKk]|[{}]|%%([dpcuoDPCUO%])|%%(\d{3})/g;

const written = (...found: readonly (string | undefined)[]): string => {
  const [, escaped, code, line, blank, above, below, sign, number] = found;
  if (escaped !== undefined) return escaped;
  if (code !== undefined) return String.fromCharCode(parseInt(code, 16));
  if (number !== undefined) return String.fromCharCode(Number(number));
  if (line !== undefined) return '\n';
  if (blank !== undefined) return ' ';
  if (above !== undefined) return `${above}/${below ?? ''}`;
  return sign === undefined ? '' : (signs[sign.toLowerCase()] ?? '');
};

/** A text of a DXF file without the marks of its lettering: `\P` is a new line, `%%d` a degree. */
export const plainDxfText = (text: string): string =>
  text
    .replace(mark, written)
    .replace(/[^\P{Cc}\n]/gu, ' ')
    .trim()
    .slice(0, longest);
