import { describe, expect, it } from 'vitest';
import type { Text } from '../../../src/drawing/atom.ts';
import { textBox } from '../../../src/drawing/lettering/textBox.ts';
import { textWidth } from '../../../src/drawing/textWidth.ts';
import { radians } from '../../../src/units/radians.ts';

const text: Text = {
  do: 'text',
  text: 'Gate',
  at: { x: 2, y: 3 },
  size: 1,
  angle: radians(0),
  align: 'left',
  baseline: 'foot',
  weight: 'regular',
  ink: 'text',
  halo: 'none',
};
const width = textWidth('Gate', 1, 'regular');

describe('textBox', () => {
  it('[D7] holds the letters from their tails to their tops', () => {
    const { centre, halfWidth, halfHeight } = textBox(text);
    expect(centre.x - halfWidth).toBeCloseTo(2, 12);
    expect(centre.x + halfWidth).toBeCloseTo(2 + width, 12);
    expect(centre.y + halfHeight).toBeCloseTo(3.22, 12);
    expect(centre.y - halfHeight).toBeCloseTo(2.22, 12);
  });

  it('[D7] puts the middle of the capitals on the point', () => {
    const { centre, halfHeight } = textBox({ ...text, baseline: 'middle' });
    // capitals reach 0.7 em over the baseline, tails 0.22 em under it
    expect(centre.y + halfHeight).toBeCloseTo(3 + 0.35 + 0.22, 12);
  });

  it('[D7] turns counter-clockwise as seen on the paper', () => {
    const { centre } = textBox({ ...text, angle: radians(Math.PI / 2) });
    expect(centre.y).toBeCloseTo(3 - width / 2, 12);
    expect(centre.x).toBeCloseTo(2 - 0.28, 12);
  });
});
