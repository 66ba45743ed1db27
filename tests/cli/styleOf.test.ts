import { describe, expect, it } from 'vitest';
import { styleOf } from '../../src/cli/styleOf.ts';

const style = (values: Record<string, string[]>) =>
  styleOf({ places: [], values: new Map(Object.entries(values)) }, ['leaves']).system;

describe('styleOf', () => {
  it('[K12] answers in millimetres only where every length was metric', () => {
    expect(style({ leaf: ['1000mm', '1.2 m'], hinge: ['40..50mm'], leaves: ['2'] })).toBe('mm');
    expect(style({ leaf: ['1000mm', '44'] })).toBe('inches');
    expect(style({ leaf: ['44in'] })).toBe('inches');
    expect(style({ json: [''] })).toBe('inches');
  });
});
