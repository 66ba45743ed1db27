import type { Load } from '../load/load.ts';
import { loadParts, type LoadLine } from '../loadLine.ts';

/** A line of load lists, and how many there are of it on each; 0 where a list lacks it. */
export interface ComparedLine extends Pick<LoadLine, 'part' | 'code' | 'item' | 'unit' | 'each'> {
  readonly counts: readonly number[];
}

/** Lines are the same that have one code and pieces of one length. */
const keyOf = ({ code, each, unit }: LoadLine): string => `${code} ${each ?? ''} ${unit}`;

/** The rule that counted a line: codes begin with it. */
const ruleOf = ({ code }: Pick<LoadLine, 'code'>): string => code.split(' ')[0] ?? code;

/** Part by part, what one rule counted together; else in the order in which they were found. */
const together = (lines: readonly ComparedLine[]): ComparedLine[] => {
  const rules = [...new Set(lines.map(ruleOf))];
  const places = new Map(rules.map((rule, n) => [rule, n]));
  return lines.toSorted(
    (a, b) =>
      loadParts.indexOf(a.part) - loadParts.indexOf(b.part) ||
      (places.get(ruleOf(a)) ?? 0) - (places.get(ruleOf(b)) ?? 0),
  );
};

/**
 * Every line that some load list has, part by part, what one rule counted together. Lines of one list with
 * one code and one length count together.
 */
export const comparedLines = (loads: readonly Pick<Load, 'lines'>[]): ComparedLine[] => {
  const found = new Map<string, ComparedLine>();
  loads.forEach(({ lines }, n) => {
    for (const line of lines) {
      const { part, code, item, unit, each } = line;
      const key = keyOf(line);
      const counts = found.get(key)?.counts ?? loads.map(() => 0);
      found.set(key, {
        ...(found.get(key) ?? { part, code, item, unit, each }),
        counts: counts.map((count, at) => (at === n ? count + line.count : count)),
      });
    }
  });
  return together([...found.values()]);
};
