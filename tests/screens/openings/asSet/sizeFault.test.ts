import { expect, it } from 'vitest';
import { sizeFault } from '../../../../src/screens/openings/asSet/sizeFault.ts';
import { inches } from '../../../../src/units/inches.ts';

it('lets 0 through only where 0 can be, and nothing below it or as long as ten miles', () => {
  expect(sizeFault(inches(0), 'more than 0')).toBe('expected more than 0');
  expect(sizeFault(inches(0), '0 or more')).toBeNull();
  expect(sizeFault(inches(-1), '0 or more')).toBe('expected 0 or more');
  expect(sizeFault(inches(1 / 64), 'more than 0')).toBeNull();
  expect(sizeFault(inches(633_600), 'more than 0')).toBeNull();
  expect(sizeFault(inches(633_601), 'more than 0')).toContain('expected a size');
});
