import type { PaperPoint } from '../../geometry/point.ts';
import type { Atom } from '../atom.ts';
import { pens } from '../pens.ts';
import type { SignName } from '../signName.ts';
import { circleOutline, polylineOutline, segmentsOutline } from './polylineOutline.ts';

/** Half of the height of a sign, paper inches. */
export const signHalf = 0.045;

const shot = ({ x, y }: PaperPoint): Atom[] => [
  {
    do: 'stroke',
    pen: pens.shot,
    outline: segmentsOutline([
      [
        { x: x - signHalf, y },
        { x: x + signHalf, y },
      ],
      [
        { x, y: y - signHalf },
        { x, y: y + signHalf },
      ],
    ]),
  },
];

const held = ({ x, y }: PaperPoint): Atom[] => {
  const head = { x: x + signHalf, y: y - signHalf };
  return [
    { do: 'stroke', pen: pens.post, outline: segmentsOutline([[{ x, y }, head]]) },
    { do: 'fill', ink: 'post', opacity: 1, outline: circleOutline(head, 0.028) },
  ];
};

const low = ({ x, y }: PaperPoint): Atom[] => {
  const outline = polylineOutline(
    [
      { x, y },
      { x: x - 0.04, y: y - 0.07 },
      { x: x + 0.04, y: y - 0.07 },
    ],
    true,
  );
  return [
    { do: 'fill', ink: 'paper', opacity: 1, outline },
    { do: 'stroke', pen: pens.leaf, outline },
  ];
};

/** Half of the width of a lath cross, paper inches. */
const crossHalf = 0.06;

const mark = ({ x, y }: PaperPoint): Atom[] => [
  {
    do: 'stroke',
    pen: pens.mark,
    outline: segmentsOutline(
      ([1, -1] as const).map((way) => [
        { x: x - crossHalf, y: y - way * crossHalf },
        { x: x + crossHalf, y: y + way * crossHalf },
      ]),
    ),
  },
];

const signs: Readonly<Record<SignName, (at: PaperPoint) => Atom[]>> = { shot, held, low, mark };

/**
 * A sign at a place of the paper: a shot as a cross, a held post as a pin that sticks in the place
 * and leans to the upper right, the lowest place under a leaf as a triangle that stands on it, a mark
 * as two laths laid across.
 */
export const signAtoms = (sign: SignName, at: PaperPoint): Atom[] => signs[sign](at);
