import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fileStem } from '../../src/site/fileStem.ts';

it('names a file for the job', () => {
  expect(fileStem('Oak Street, lot 12/B')).toBe('oak-street-lot-12-b');
  expect(fileStem('Peña')).toBe('pena');
  expect(fileStem('  ')).toBe('yard');
});

it('never gives a path, a hidden file or nothing', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (name) => {
      expect(fileStem(name)).toMatch(/^[\p{L}\p{N}]+(-[\p{L}\p{N}]+)*$/u);
    }),
  );
});

it('cuts a long name between two letters, not within one', () => {
  // a letter outside the first 65,536 is two code units
  const letters = [...fileStem(`a${'\u{20000}'.repeat(500)}`)];
  expect(letters).toHaveLength(60);
  expect(new Set(letters)).toEqual(new Set(['a', '\u{20000}']));
});
