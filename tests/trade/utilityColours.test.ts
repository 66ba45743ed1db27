import { describe, expect, it } from 'vitest';
import { utilityColours } from '../../src/trade/utilityColours.ts';

describe('utilityColours', () => {
  it('[T10] are those of the APWA Uniform Color Code', () => {
    // as state one-call centres reprint it
    const colours = Object.entries(utilityColours).map(([marked, { colour }]) => [marked, colour]);
    expect(colours).toEqual([
      ['electric', 'red'],
      ['gas', 'yellow'],
      ['communication', 'orange'],
      ['water', 'blue'],
      ['reclaimed', 'purple'],
      ['sewer', 'green'],
      ['survey', 'pink'],
      ['excavation', 'white'],
    ]);
  });

  it('[T10] no two are alike', () => {
    const colours = Object.values(utilityColours).map(({ colour }) => colour);
    expect(new Set(colours).size).toBe(colours.length);
  });
});
