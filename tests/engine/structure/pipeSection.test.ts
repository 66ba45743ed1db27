import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pipeSection } from '../../../src/engine/structure/pipeSection.ts';
import { fencePipes } from '../../../src/trade/pipes.ts';
import { steelWeight } from '../../../src/trade/steel.ts';
import { inches } from '../../../src/units/inches.ts';
import { integral } from './numeric.ts';

/** Half the width of a disc at a height over its middle, smooth where the turn is given instead. */
const ring = (od: number, wall: number, of: (y: number, width: number) => number): number => {
  const disc = (radius: number): number =>
    integral(
      (turn) => {
        const y = radius * Math.sin(turn);
        return of(y, 2 * radius * Math.cos(turn)) * radius * Math.cos(turn);
      },
      [-Math.PI / 2, Math.PI / 2],
    );
  return disc(od / 2) - disc(od / 2 - wall);
};

describe('pipeSection', () => {
  it('[Z1] agrees with an integration over strips within 0.1 %', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 12, noNaN: true }),
        fc.double({ min: 0.02, max: 0.99, noNaN: true }),
        (od, share) => {
          const wall = (share * od) / 2;
          const found = pipeSection({ od: inches(od), wall: inches(wall) });
          const inertia = ring(od, wall, (y, width) => y * y * width);
          const plastic = ring(od, wall, (y, width) => Math.abs(y) * width);
          const area = ring(od, wall, (_y, width) => width);
          expect(Math.abs(found.area / area - 1)).toBeLessThan(1e-3);
          expect(Math.abs(found.inertia / inertia - 1)).toBeLessThan(1e-3);
          expect(Math.abs(found.elastic / (inertia / (od / 2)) - 1)).toBeLessThan(1e-3);
          expect(Math.abs(found.plastic / plastic - 1)).toBeLessThan(1e-3);
        },
      ),
    );
  });

  it.each(fencePipes.map((pipe) => [pipe.label, pipe] as const))(
    '[Z1] %s weighs what the table says within 0.5 %%',
    (_label, pipe) => {
      // 12 in to the foot, by the plain-end weight of ASME B36.10M; from memory
      const pounds = 12 * steelWeight * pipeSection(pipe).area;
      expect(Math.abs(pounds / pipe.poundsPerFoot - 1)).toBeLessThan(0.005);
    },
  );

  it('[Z1] a wall that no pipe can have is refused', () => {
    const make = (od: number, wall: number) => () =>
      pipeSection({ od: inches(od), wall: inches(wall) });
    expect(make(2, 1.01)).toThrow('wall 1.01 of a pipe of 2 in: expected above 0, at most 1');
    expect(make(2, 0)).toThrow(RangeError);
    expect(make(2, NaN)).toThrow(RangeError);
  });
});
