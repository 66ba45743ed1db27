import { expect, it } from 'vitest';
import { freshName } from '../../src/site/freshName.ts';

it('[S42] counts on from the largest number of its row', () => {
  expect(freshName('M', [])).toBe('M1');
  expect(freshName('M', ['M2', 'M10', 'M', 'M3a', 'm99', 'XM50', ''])).toBe('M11');
  expect(freshName('Walk ', ['Walk 1', 'Walk1', 'Walk 2 '])).toBe('Walk 2');
  expect(freshName('M', [`M${'9'.repeat(40)}`])).toBe('M1');
});
