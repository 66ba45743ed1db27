import type { Pen } from './pen.ts';

const pen = (ink: Pen['ink'], width: number, dash: readonly number[] = []): Pen => ({
  ink,
  width,
  dash,
});

/**
 * Every pen by name. Widths in paper inches: thin 0.25 mm, medium 0.35 mm and heavy 0.5 mm are
 * the steps of drafting practice (common practice, no published source read).
 */
export const pens = {
  fence: pen('fence', 0.02),
  'fence ghost': pen('ghost', 0.02, [0.06, 0.04]),
  post: pen('post', 0.014),
  gate: pen('gate', 0.02),
  leaf: pen('leaf', 0.014),
  swing: pen('leaf', 0.008, [0.05, 0.03]),
  building: pen('building', 0.02),
  boundary: pen('boundary', 0.014, [0.25, 0.05, 0.05, 0.05, 0.05, 0.05]),
  paving: pen('faint', 0.01),
  pool: pen('water', 0.014),
  'keep-out': pen('keep-out', 0.01, [0.06, 0.04]),
  'height zone': pen('height zone', 0.014, [0.14, 0.04, 0.02, 0.04]),
  tree: pen('tree', 0.01),
  contour: pen('ground', 0.005),
  shot: pen('ground', 0.01),
  electric: pen('electric', 0.014, [0.2, 0.06]),
  gas: pen('gas', 0.014, [0.2, 0.06]),
  communication: pen('communication', 0.014, [0.2, 0.06]),
  water: pen('potable', 0.014, [0.2, 0.06]),
  reclaimed: pen('reclaimed', 0.014, [0.2, 0.06]),
  sewer: pen('sewer', 0.014, [0.2, 0.06]),
  mark: pen('survey', 0.018),
  here: pen('selected', 0.012, [0.06, 0.04]),
  accuracy: pen('survey', 0.006, [0.03, 0.05]),
  tape: pen('dimension', 0.01, [0.12, 0.03]),
  loose: pen('settle', 0.014, [0.04, 0.04]),
  fixed: pen('dimension', 0.014),
  dimension: pen('dimension', 0.007),
  frame: pen('line', 0.02),
  thin: pen('line', 0.007),
  detail: pen('line', 0.012),
  'match line': pen('line', 0.03, [0.3, 0.06, 0.06, 0.06, 0.06, 0.06]),
  faint: pen('faint', 0.005),
  guide: pen('ghost', 0.007, [0.04, 0.04]),
  selected: pen('selected', 0.03),
  ghost: pen('ghost', 0.014),
  stop: pen('stop', 0.02),
} as const satisfies Record<string, Pen>;

export type PenName = keyof typeof pens;
