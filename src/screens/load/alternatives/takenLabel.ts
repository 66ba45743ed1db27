import { phrase } from '../../../phrases/phrase.ts';

/** What such a name begins with: as the screen says it, and as it does in English. */
const words = [phrase`Instead of `, 'Instead of '];

/** As long as the document holds a label. */
const longest = 200;

/**
 * What the alternative is called that holds what the plan was before it was taken: `Instead of Tall`, and
 * `Tall` again when that is taken back. A name that would be too long stays.
 */
export const takenLabel = (label: string): string => {
  const begins = words.find((text) => label.startsWith(text) && label.length > text.length);
  if (begins !== undefined) return label.slice(begins.length);
  const name = `${words[0]}${label}`;
  return name.length > longest ? label : name;
};
