import type { Site } from '../../../src/site/site.ts';
import { inches } from '../../../src/units/inches.ts';
import { namedSite } from '../../store/namedSite.ts';

/** A site of marks with tapes that read what is true. */
export const tapedSite = (
  marks: Readonly<Record<string, readonly number[]>>,
  pairs: readonly string[],
  fixed: readonly string[] = [],
): Site => {
  const at = ([id, [x = 0, y = 0]]: readonly [string, readonly number[]]) =>
    [`mark:${id}`, { x, y, label: '', fixed: fixed.includes(id) }] as const;
  const tapeOf = (pair: string) => {
    const [from = '', to = ''] = pair;
    const [[x = 0, y = 0], [u = 0, v = 0]] = [marks[from]!, marks[to]!];
    const length = inches(Math.hypot(u - x, v - y));
    const ends = { from: `mark:${from}`, to: `mark:${to}` } as const;
    return [
      `observation:${pair}`,
      { kind: 'tape', ...ends, length, trust: null, label: '' },
    ] as const;
  };
  return {
    ...namedSite('Held'),
    marks: Object.fromEntries(Object.entries(marks).map(at)),
    observations: Object.fromEntries(pairs.map(tapeOf)),
  };
};
