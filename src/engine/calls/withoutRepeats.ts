import type { Figure } from './figure.ts';

/** Within one part in 2,000: a distance that was turned into another unit and rounded. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(a, b) / 2000 + 0.6;

/**
 * The figures of a call without the distances in brackets that say the distance before them again, as in
 * `285.10 feet (86.90 m)`; one in brackets that says another stays.
 */
export const withoutRepeats = (text: string, figures: readonly Figure[]): readonly Figure[] =>
  figures.filter((figure, n) => {
    const before = figures[n - 1];
    if (figure.kind !== 'length' || before?.kind !== 'length') return true;
    const between = text.slice(before.end, figure.at).trim();
    return !(between === '(' && same(figure.length, before.length));
  });
