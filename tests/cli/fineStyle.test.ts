import { describe, expect, it } from 'vitest';
import { fineStyle, partStyle } from '../../src/cli/fineStyle.ts';

describe('how small things are written', () => {
  it.each([
    ['feet', 'feet', 'inches'],
    ['inches', 'inches', 'inches'],
    ['decimal feet', 'inches', 'inches'],
    ['mm', 'mm', 'mm'],
    ['m', 'mm', 'mm'],
  ] as const)('lengths in %s: leaves in %s, parts in %s', (system, fine, part) => {
    expect(fineStyle({ system, fraction: 16 })).toEqual({ system: fine, fraction: 16 });
    expect(partStyle({ system, fraction: 16 })).toEqual({ system: part, fraction: 16 });
  });
});
