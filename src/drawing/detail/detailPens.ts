import type { Pen } from '../pen.ts';
import { pens } from '../pens.ts';

/**
 * The pens of a gate's detail, one for each thing that is drawn. Widths in paper inches; none is thinner than
 * 0.1 mm, so that what is small at its scale still shows.
 */
export const detailPens = {
  post: { ink: 'post', width: 0.014, dash: [] },
  hole: { ink: 'line', width: 0.01, dash: [] },
  concrete: { ink: 'faint', width: 0.005, dash: [] },
  ground: { ink: 'ground', width: 0.02, dash: [] },
  earth: { ink: 'ground', width: 0.006, dash: [] },
  unknown: { ink: 'ground', width: 0.014, dash: [0.08, 0.05] },
  frame: { ink: 'leaf', width: 0.01, dash: [] },
  fabric: { ink: 'faint', width: 0.004, dash: [] },
  hinge: { ink: 'gate', width: 0.012, dash: [] },
  latch: { ink: 'gate', width: 0.018, dash: [] },
  rod: { ink: 'gate', width: 0.018, dash: [] },
  receiver: { ink: 'gate', width: 0.01, dash: [] },
  roller: { ink: 'gate', width: 0.01, dash: [] },
  opened: { ink: 'leaf', width: 0.01, dash: [0.06, 0.03] },
  way: { ink: 'leaf', width: 0.007, dash: [0.03, 0.03] },
  met: { ink: 'stop', width: 0.02, dash: [] },
  opening: pens.dimension,
  size: { ...pens.dimension },
} as const satisfies Record<string, Pen>;
