import { expect, it } from 'vitest';
import { compassWord } from '../../src/units/compassWord.ts';
import { fromDegrees } from '../../src/units/radians.ts';

it('names the nearest of the eight winds, whole turns aside', () => {
  const named = [0, 22, 23, 90, 180, -180, -90, 270, 315, 359, 765].map((degrees) =>
    compassWord(fromDegrees(degrees)),
  );
  expect(named).toEqual([
    ...(['east', 'east', 'north-east', 'north', 'west', 'west', 'south', 'south'] as const),
    ...(['south-east', 'east', 'north-east'] as const),
  ]);
});
