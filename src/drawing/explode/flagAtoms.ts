import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { circleOutline, polylineOutline, segmentsOutline } from './polylineOutline.ts';

/** Height of the staff and size of the cloth, paper inches. */
export interface FlagSize {
  readonly staff: number;
  readonly cloth: number;
}

/** A flag on a drawing. */
export const flagSize: FlagSize = { staff: 0.34, cloth: 0.17 };

type Level = 'stop' | 'settle' | 'caution';

/** The cloth differs in shape too, for eyes and printers without colour. */
const cloth = (level: Level, { x, y }: PaperPoint, size: number) => {
  const shapes = {
    stop: [0, 0, 1, 0, 1, 1, 0, 1],
    settle: [0, 0, 1, 0, 0.65, 0.5, 1, 1, 0, 1],
    caution: [0, 0, 1, 0.5, 0, 1],
  }[level];
  const points = Array.from({ length: shapes.length / 2 }, (_, n) => ({
    x: x + (shapes[2 * n] ?? 0) * size,
    y: y + (shapes[2 * n + 1] ?? 0) * size,
  }));
  return polylineOutline(points, true);
};

/**
 * A flag planted at a point of the paper: a staff with a square (stop), swallow-tailed (settle)
 * or pointed (caution) cloth to its right.
 */
export const flagAtoms = (at: PaperPoint, level: Level, size: FlagSize = flagSize): Atom[] => {
  const top = { x: at.x, y: at.y - size.staff };
  return [
    { do: 'fill', ink: level, opacity: 1, outline: circleOutline(at, 0.028) },
    {
      do: 'stroke',
      pen: { ink: level, width: 0.018, dash: [] },
      outline: segmentsOutline([[at, top]]),
    },
    { do: 'fill', ink: level, opacity: 1, outline: cloth(level, top, size.cloth) },
  ];
};
