/**
 * A figure and how much more or less it is than the first: `7 (+2)`. `how` writes a size; a difference that
 * is written as nothing is not told.
 */
export const moreText = <T extends number>(
  value: T,
  more: T | null,
  how: (size: T) => string,
): string => {
  const text = how(value);
  if (more === null) return text;
  const size = how(Math.abs(more) as T);
  if (size === how(0 as T)) return text;
  return `${text} (${more < 0 ? '-' : '+'}${size})`;
};
