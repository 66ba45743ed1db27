import type { PenName } from '../pens.ts';

/**
 * What a line is to letters: a thin one of the yard can be broken for them; a solid one (fence, posts,
 * leaves) cannot; a line of a dimension chain can, and had better not be; a heavy one is a wall, which
 * leaders keep off too; leaders cross nothing.
 */
export const weights = ['thin', 'chain', 'solid', 'heavy', 'leader'] as const;

export type Weight = (typeof weights)[number];

/** So much for every weight. */
export type PerWeight = Readonly<Record<Weight, number>>;

const solid: ReadonlySet<PenName> = new Set<PenName>([
  ...(['fence', 'fence ghost', 'post', 'gate', 'leaf', 'stop', 'match line'] as const),
  ...(['dimension', 'frame', 'detail', 'mark', 'shot', 'selected'] as const),
]);

/** What a line drawn with a pen is to letters. */
export const weightOf = (pen: PenName): Weight => {
  if (pen === 'building') return 'heavy';
  return solid.has(pen) ? 'solid' : 'thin';
};
