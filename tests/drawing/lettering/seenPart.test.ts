import { describe, expect, it } from 'vitest';
import { seenPart } from '../../../src/drawing/lettering/seenPart.ts';
import type { ChainLine } from '../../../src/drawing/lettering/chainLine.ts';

const line = {
  points: [],
  along: { x: 1, y: 0 },
  out: { x: 0, y: -1 },
  off: 0.5,
} as unknown as ChainLine;
const piece = { from: { x: 0, y: 1 }, to: { x: 40, y: 1 }, text: '40 bays' };
const between = (low: number, high: number) => ({
  sees: ({ x }: { readonly x: number }) => x >= low && x <= high,
});

describe('a piece that runs out of the window', () => {
  it('[D115] bears its text on what is seen of it', () => {
    expect(seenPart(line, piece, between(10, 18))).toMatchObject({
      from: { x: 10, y: 1 },
      to: { x: 18, y: 1 },
      text: '40 bays',
    });
  });

  it('[D115] bears none where little or nothing of it is seen', () => {
    expect(seenPart(line, piece, between(39, 60))).toBeNull();
    expect(seenPart(line, piece, between(41, 60))).toBeNull();
  });
});
