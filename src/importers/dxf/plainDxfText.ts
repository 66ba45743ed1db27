/** Written as %% and a letter in a DXF text. */
const signs: Readonly<Record<string, string>> = { d: '°', p: '±', c: '⌀' };

/** The longest that a note on a site may be. */
const longest = 4000;

/** A text of a DXF file without the marks of its lettering: `\P` is a new line, `%%d` a degree. */
export const plainDxfText = (text: string): string =>
  text
    .replace(/\\U\+([0-9A-Fa-f]{4})/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)))
    .replace(/\\P/g, '\n')
    .replace(/\\~/g, ' ')
    .replace(/\\S([^;]*?)[#^/]([^;]*);/g, '$1/$2')
    .replace(/\\[ACcFfHhQTWp][^;\\{}]*;/g, '')
    .replace(/\\[LlOoKk]/g, '')
    .replace(/(?<!\\)[{}]/g, '')
    .replace(/\\([\\{}])/g, '$1')
    .replace(/%%([dpcDPC])/g, (_, letter: string) => signs[letter.toLowerCase()] ?? '')
    .replace(/%%[uUoO]/g, '')
    .replace(/[^\P{Cc}\n]/gu, ' ')
    .trim()
    .slice(0, longest);
