/**
 * The next name in a row such as `M1`, `M2`: the stem and one more than the largest number that it has
 * among the names that are there.
 */
export const freshName = (stem: string, names: readonly string[]): string => {
  const numbers = names.flatMap((name) => {
    const rest = name.startsWith(stem) ? name.slice(stem.length) : '';
    return /^\d{1,9}$/.test(rest) ? Number(rest) : [];
  });
  return `${stem}${Math.max(0, ...numbers) + 1}`;
};
