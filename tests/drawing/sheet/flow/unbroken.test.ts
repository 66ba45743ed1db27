import { describe, expect, it } from 'vitest';
import { unbroken } from '../../../../src/drawing/sheet/flow/unbroken.ts';
import { textsOf } from '../../textsOf.ts';

const words = (count: number): string => Array.from({ length: count }, (_, n) => `w${n}`).join(' ');

describe('unbroken', () => {
  it('[D35] keeps the lines of a paragraph together', () => {
    const blocks = unbroken(words(60), 6);
    expect(blocks).toHaveLength(1);
    const lines = textsOf(blocks[0]?.atoms ?? []).map(({ text }) => text);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(' ')).toBe(words(60));
  });

  it('[D21] lets a paragraph that would fill a column go on elsewhere', () => {
    const blocks = unbroken(words(900), 6);
    expect(blocks.length).toBeGreaterThan(12);
    expect(blocks.flatMap(({ atoms }) => textsOf(atoms).map(({ text }) => text)).join(' ')).toBe(
      words(900),
    );
  });
});
