import type { Atom, Text } from '../../src/drawing/atom.ts';
import type { Page } from '../../src/drawing/sheet/page.ts';
import { radians } from '../../src/units/radians.ts';

const text = (words: string, y: number, more: Partial<Text> = {}): Text => ({
  do: 'text',
  text: words,
  at: { x: 1, y },
  size: 0.2,
  angle: radians(0),
  align: 'left',
  baseline: 'foot',
  weight: 'regular',
  ink: 'text',
  halo: 'none',
  ...more,
});

const atoms: readonly Atom[] = [
  {
    do: 'stroke',
    pen: { ink: 'fence', width: 0.02, dash: [0.1, 0.05] },
    outline: [
      { go: 'move', x: 1, y: 1 },
      { go: 'line', x: 3, y: 1 },
      { go: 'arc', x: 3, y: 2, radius: 1, start: Math.PI / 2, sweep: -Math.PI / 2 },
    ],
  },
  {
    do: 'clip',
    outline: [
      { go: 'move', x: 1, y: 3 },
      { go: 'line', x: 3, y: 3 },
      { go: 'line', x: 2, y: 4 },
      { go: 'close' },
    ],
    atoms: [
      {
        do: 'fill',
        ink: 'water',
        opacity: 0.4,
        outline: [
          { go: 'move', x: 3, y: 3.5 },
          { go: 'arc', x: 2, y: 3.5, radius: 1, start: 0, sweep: 2 * Math.PI },
          { go: 'close' },
        ],
      },
    ],
  },
  text('Hold 9\'-10 1/2"', 5),
  text('Größe ≤ 3 & <b>', 5.5, { weight: 'bold', halo: 'paper' }),
  text('Lane side', 7, { angle: radians(Math.PI / 2), align: 'middle', baseline: 'middle' }),
];

/** A page with every kind of atom, for all painters. */
export const scene: Page = {
  title: 'Scene & all',
  paper: { label: 'Letter', width: 8.5, height: 11 },
  layers: [{ name: 'sheet', atoms }],
  links: [],
};
