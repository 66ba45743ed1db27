import type { LengthSystem } from '../../../units/lengthStyle.ts';
import type { Atom } from '../../atom.ts';
import { rectangleOutline } from '../../explode/polylineOutline.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import { roundStep } from './roundStep.ts';

/** Each of the four fields is at least so long on the paper unless said, inches. */
const leastField = 0.45;
const bar = 0.07;

/**
 * A bar scale, its zero at 0, 0: four fields of a round length each, no shorter than `least` paper inches.
 * `scale` is paper to ground.
 */
export const barScale = (
  scale: number,
  system: LengthSystem,
  least: number = leastField,
): { readonly atoms: readonly Atom[]; readonly width: number } => {
  const { size, text } = roundStep(least / scale, system);
  const field = size * scale;
  const [count = '', unit = ''] = text.split(' ');
  const label = (n: number): string =>
    n === 4 ? `${Number(count) * n} ${unit}` : `${Number(count) * n}`;
  const boxes = [0, 1, 2, 3].map((n): Atom => {
    const outline = rectangleOutline({ x: n * field, y: 0 }, field, bar);
    return n % 2 === 0
      ? { do: 'fill', ink: 'line', opacity: 1, outline }
      : { do: 'stroke', pen: { ink: 'line', width: 0.01, dash: [] }, outline };
  });
  const ends: Atom = {
    do: 'stroke',
    pen: { ink: 'line', width: 0.01, dash: [] },
    outline: rectangleOutline({ x: 0, y: 0 }, 4 * field, bar),
  };
  const texts = [0, 2, 4].flatMap((n) =>
    lineOfText(label(n), n * field, -0.1, { size: letters.small, align: 'middle' }),
  );
  return { atoms: [...boxes, ends, ...texts], width: 4 * field };
};
