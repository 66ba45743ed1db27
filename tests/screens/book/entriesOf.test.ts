import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../../src/screens/book/entriesOf.ts';
import { inventedHinge } from '../../store/invented.ts';

const book = {
  'hardware:b': { ...inventedHinge('Strap hinge'), remark: 'Shelf 4' },
  'hardware:a': inventedHinge('Bulldog hinge'),
  'hardware:c': inventedHinge('Strap hinge'),
};
const found = (search: string) => entriesOf(book, search, () => 'Takes up 2"').map(({ id }) => id);

describe('entriesOf', () => {
  it('has all by name where nothing is searched for', () => {
    expect(found(' ')).toEqual(['hardware:a', 'hardware:b', 'hardware:c']);
  });

  it.each([
    ['STRAP', ['hardware:b', 'hardware:c']],
    ['hinge shelf', ['hardware:b']],
    ['takes bull', ['hardware:a']],
    ['latch', []],
  ])('finds what has every word of %j', (search, ids) => {
    expect(found(search)).toEqual(ids);
  });
});
