/** Square inches in each unit that areas of land are told in. */
const squares: readonly (readonly [form: RegExp, inches: number])[] = [
  [/^acres?|^ac\b/, 43_560 * 144],
  [/^hectares?|^ha\b/, 10_000 / 0.0254 ** 2],
  [/^sq(?:uare|\.)? ?(?:feet|foot|ft)|^s\.? ?f\b/, 144],
  [/^sq(?:uare|\.)? ?(?:met(?:er|re)s?|m\b)/, 1 / 0.0254 ** 2],
];

const number = /(?<![\w.,])(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?)(?: ?(?:\+\/-|±))?[ -]?/g;

/**
 * The area that a clause of a deed in small letters says, in square inches: `containing 6.26 acres`,
 * `272,611 square feet`; the first that it says. Null where it says none in figures.
 */
export const statedArea = (text: string): number | null => {
  for (const found of text.matchAll(number)) {
    const rest = text.slice(found.index + found[0].length);
    const unit = squares.find(([form]) => form.test(rest));
    const size = Number(found[1]?.replaceAll(',', ''));
    if (unit !== undefined && size > 0) return size * unit[1];
  }
  return null;
};
