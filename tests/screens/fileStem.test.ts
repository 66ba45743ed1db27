import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fileStem } from '../../src/screens/files/fileStem.ts';

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
