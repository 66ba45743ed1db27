import { expect, it } from 'vitest';
import { together } from '../../src/importers/together.ts';

const at = (x: number, y: number) => ({ x, y });

it('[I9] the place with the most points is kept, whichever way the places lie', () => {
  const [a, b, c] = [
    [at(0, 900), at(1, 901)],
    [at(900, 0), at(901, 1), at(902, 2)],
    [at(900, 900), at(901, 901)],
  ];
  // the middle of all of x is in one place and that of all of y in another
  for (const all of [
    [...a, ...b, ...c],
    [...c, ...b, ...a],
  ]) {
    expect(together(all, 10)).toEqual(b);
  }
  // to the side alone b and c are one place
  expect(together([...b.slice(0, 2), ...c, at(899, 899)], 10)).toHaveLength(3);
});

it('[I9] neighbours up to the gap stay together; of as many the farther to the right is kept', () => {
  expect(together([at(20, 0), at(0, 0), at(10, 0)], 10)).toHaveLength(3);
  expect(together([at(100, 0), at(0, 0)], 10)).toEqual([at(100, 0)]);
  expect(together([], 10)).toEqual([]);
});
