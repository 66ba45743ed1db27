/**
 * Texts with whole numbers that follow one another drawn together, as `3–6`, in the order of the
 * numbers and after all other texts. Two numbers in a row stay two.
 */
export const inRanges = (texts: readonly string[]): string[] => {
  const isNumber = (text: string): boolean => /^\d{1,9}$/.test(text);
  const numbers = [...new Set(texts.filter(isNumber).map(Number))].sort((a, b) => a - b);
  const ranges: [number, number][] = [];
  for (const number of numbers) {
    const last = ranges.at(-1);
    if (last !== undefined && last[1] === number - 1) last[1] = number;
    else ranges.push([number, number]);
  }
  const written = ranges.flatMap(([from, to]) => {
    if (from === to) return [`${from}`];
    return to === from + 1 ? [`${from}`, `${to}`] : [`${from}–${to}`];
  });
  return [...texts.filter((text) => !isNumber(text)), ...written];
};
