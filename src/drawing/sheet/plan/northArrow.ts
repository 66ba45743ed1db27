import type { Atom } from '../../atom.ts';
import { circleOutline, polylineOutline } from '../../explode/polylineOutline.ts';
import { letters } from '../letters.ts';
import { lineOfText } from '../lineOfText.ts';
import { phrase } from '../../../phrases/phrase.ts';

/** An arrow to the north, which is up on every plan; its circle is about 0, 0, paper inches. */
export const northArrow = (): Atom[] => {
  const half = (side: 1 | -1) =>
    polylineOutline(
      [
        { x: 0, y: -0.2 },
        { x: side * 0.09, y: 0.14 },
        { x: 0, y: 0.08 },
      ],
      true,
    );
  const pen = { ink: 'line', width: 0.01, dash: [] } as const;
  return [
    { do: 'stroke', pen, outline: circleOutline({ x: 0, y: 0 }, 0.2) },
    { do: 'fill', ink: 'line', opacity: 1, outline: half(-1) },
    { do: 'fill', ink: 'paper', opacity: 1, outline: half(1) },
    { do: 'stroke', pen, outline: half(1) },
    ...lineOfText(phrase`N`, 0, -0.3, { size: letters.small, weight: 'bold', align: 'middle' }),
  ];
};
