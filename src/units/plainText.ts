/** ½ and its like, or a fraction of raised and lowered digits, and the dash before it. */
const vulgarFraction = /(-?)([¼½¾⅐-⅞]|[⁰¹²³⁴-⁹]+⁄[₀-₉]+)/g;

/**
 * A quantity in one spelling, however a keyboard or a phone wrote it: fractions as ` n/d `, primes
 * and curly quotes as ' and ", dashes and the minus as -, single blanks, lower case.
 */
export const plainText = (text: string): string =>
  text
    .replace(/[\u2010-\u2015−]/g, '-')
    // blanks keep 5½ and ½2 from running into other numbers
    .replace(vulgarFraction, (_, dash: string, sign: string) => {
      return `${dash === '' ? ' ' : dash}${sign.normalize('NFKC')} `;
    })
    .replace(/[⁄∕]/g, '/')
    .replace(/[″”“ʺ]/g, '"')
    .replace(/[′’‘ʹʼ]/g, "'")
    .replaceAll("''", '"')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase();
