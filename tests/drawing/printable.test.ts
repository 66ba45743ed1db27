import { describe, expect, it } from 'vitest';
import { printable } from '../../src/drawing/printable.ts';

describe('printable', () => {
  it('[D3] puts ? for what the font lacks and keeps the rest', () => {
    expect(printable('Tor 門 → Hof')).toBe('Tor ? ? Hof');
  });

  it('makes one line of several and joins accents to their letters', () => {
    expect(printable(' A\n B\tC ')).toBe('A B C');
    expect(printable('e\u0301')).toBe('é');
  });
});
