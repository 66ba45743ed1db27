import { phrase } from '../../../phrases/phrase.ts';

/** Whole numbers, rising, with those that follow one another drawn together; two stay two. */
const drawnTogether = (numbers: readonly number[]): string[] => {
  const ranges: [number, number][] = [];
  for (const number of numbers) {
    const last = ranges.at(-1);
    if (last !== undefined && last[1] === number - 1) last[1] = number;
    else ranges.push([number, number]);
  }
  return ranges.flatMap(([from, to]) => {
    if (from === to) return [`${from}`];
    return to === from + 1 ? [`${from}`, `${to}`] : [`${from}–${to}`];
  });
};

/**
 * Texts with the numbers of line posts drawn together as one, `posts 3–6, 9`, after all others and
 * in the order of the numbers.
 */
export const inRanges = (texts: readonly string[]): string[] => {
  const isNumber = (text: string): boolean => /^\d{1,9}$/.test(text);
  const numbers = [...new Set(texts.filter(isNumber).map(Number))].sort((a, b) => a - b);
  const rest = texts.filter((text) => !isNumber(text));
  if (numbers.length === 0) return rest;
  const all = drawnTogether(numbers).join(', ');
  return [...rest, numbers.length === 1 ? phrase`post ${all}` : phrase`posts ${all}`];
};
