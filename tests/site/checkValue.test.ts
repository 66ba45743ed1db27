import { describe, expect, it } from 'vitest';
import { checkValue } from '../../src/site/checkValue.ts';

describe('checkValue', () => {
  it.each([
    ['', '811C9DC5'],
    ['a', 'E40C292C'],
    ['foobar', 'BF9CF968'],
  ])('[S24] of %j is the published one', (text, value) => {
    // test vectors for 32-bit FNV-1a, L. C. Noll, "FNV Hash" (also in the IETF draft on FNV)
    expect(checkValue(text)).toBe(value);
  });

  it('[S24] counts the bytes of UTF-8', () => {
    // é is C3 A9 and 😀 is F0 9F 98 80 in UTF-8
    const bytes = (...codes: number[]): string => {
      const hash = codes.reduce((so, byte) => Math.imul(so ^ byte, 0x01000193) >>> 0, 0x811c9dc5);
      return hash.toString(16).toUpperCase().padStart(8, '0');
    };
    expect(checkValue('é')).toBe(bytes(0xc3, 0xa9));
    expect(checkValue('😀')).toBe(bytes(0xf0, 0x9f, 0x98, 0x80));
    expect(checkValue('≤')).toBe(bytes(0xe2, 0x89, 0xa4));
  });
});
