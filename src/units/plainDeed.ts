/** ½ and its like, or a fraction of raised and lowered digits. */
const vulgarFraction = /([¼½¾⅐-⅞]|[⁰¹²³⁴-⁹]+⁄[₀-₉]+)/g;

/**
 * The text of a deed or plat with one sign for each thing, however it was scanned or typed: ° for
 * degrees, ' and " for minutes and seconds or feet and inches, - for dashes, fractions as ` n/d `. Its
 * lines, blanks and capitals stay, so that what was written can be shown beside what was read.
 */
export const plainDeed = (text: string): string =>
  text
    .replace(/\r\n?|[\u2028\u2029]/g, '\n')
    .replace(/[\u2010-\u2015−]/g, '-')
    .replace(vulgarFraction, (sign) => ` ${sign.normalize('NFKC')} `)
    .replace(/[⁄∕]/g, '/')
    .replace(/[ºᵒ˚∘]/g, '°')
    .replace(/[″”“ʺ]/g, '"')
    .replace(/[′’‘ʹʼ´`]/g, "'")
    .replaceAll("''", '"')
    .replace(/[^\S\n]/g, ' ');

/** Small letters in the same places: text whose length would change by them is left as it is. */
export const smallLetters = (text: string): string => {
  const small = text.toLowerCase();
  return small.length === text.length ? small : text.replace(/[A-ZΔ]/g, (one) => one.toLowerCase());
};
