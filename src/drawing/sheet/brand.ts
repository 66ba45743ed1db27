import type { Atom } from '../atom.ts';
import { circleOutline, polylineOutline, segmentsOutline } from '../explode/polylineOutline.ts';
import { letters } from './letters.ts';
import { lineOfText } from './lineOfText.ts';
import type { Rect } from './rect.ts';

/** A lath in the ground with the line pulled from it. */
const lath = (x: number, y: number, height: number): Atom[] => {
  const half = 0.05;
  const foot = y + height;
  const stake = polylineOutline(
    [
      { x: x - half, y },
      { x: x + half, y },
      { x: x + half, y: foot - 0.12 },
      { x, y: foot },
      { x: x - half, y: foot - 0.12 },
    ],
    true,
  );
  return [
    { do: 'fill', ink: 'gate', opacity: 1, outline: stake },
    {
      do: 'stroke',
      pen: { ink: 'line', width: 0.016, dash: [] },
      outline: segmentsOutline([
        [
          { x: x + half, y: y + 0.13 },
          { x: x + 0.75, y: y + 0.13 },
        ],
      ]),
    },
    { do: 'fill', ink: 'line', opacity: 1, outline: circleOutline({ x, y: y + 0.13 }, 0.03) },
  ];
};

/** How wide what the set is may be, inches: block and lath leave no more. */
const sortWidth = 0.78;

/** The name of the program in the left of a block, with what the set is under it. */
export const brand = ({ x, y }: Rect, sort: string): Atom[] => [
  ...lath(x + 0.2, y + 0.1, 0.58),
  ...lineOfText('Lathline', x + 0.34, y + 0.4, { size: letters.strong, weight: 'bold' }),
  ...lineOfText(sort, x + 0.34, y + 0.59, {
    size: letters.small,
    ink: 'dimension',
    width: sortWidth,
  }),
];
