const words = 'Instead of ';

/** As long as the document holds a label. */
const longest = 200;

/**
 * What the alternative is called that holds what the plan was before it was taken: `Instead of Tall`, and
 * `Tall` again when that is taken back. A name that would be too long stays.
 */
export const takenLabel = (label: string): string => {
  if (label.startsWith(words) && label.length > words.length) return label.slice(words.length);
  const name = `${words}${label}`;
  return name.length > longest ? label : name;
};
