import type { OrientedBox } from '../../geometry/orientedBox.ts';
import { radians } from '../../units/radians.ts';
import type { Text } from '../atom.ts';
import { textWidth } from '../textWidth.ts';

/** Parts of an em over and under the baseline that letters of the sheet font take up. */
export const letterExtent = { capital: 0.7, above: 0.78, below: 0.22 } as const;

/**
 * The rectangle that a text takes up on the paper, in inches, tails of letters and accents of
 * small letters included. The box turns from x towards y, which is down: against `text.angle`.
 */
export const textBox = (text: Text): OrientedBox<'paper'> => {
  const { capital, above, below } = letterExtent;
  const halfWidth = textWidth(text.text, text.size, text.weight) / 2;
  const along = { left: halfWidth, middle: 0, right: -halfWidth }[text.align];
  const up = ((above - below) / 2 - (text.baseline === 'middle' ? capital / 2 : 0)) * text.size;
  const [cos, sin] = [Math.cos(text.angle), Math.sin(text.angle)];
  return {
    centre: {
      x: text.at.x + along * cos - up * sin,
      y: text.at.y - along * sin - up * cos,
    },
    halfWidth,
    halfHeight: ((above + below) / 2) * text.size,
    angle: radians(-text.angle),
  };
};
