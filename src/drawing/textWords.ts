/** A space at which a line may be broken: not before the fraction of a length such as `5'-3 1/2"`. */
const breaks = / (?!(?<=\d )\d+\/\d)/;

/** The pieces of a text that are never broken over two lines, in order; empty for runs of spaces. */
export const textWords = (text: string): string[] => text.split(breaks);
