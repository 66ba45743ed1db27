import { describe, expect, it } from 'vitest';
import { laid, papers, usualPaper } from '../../../src/drawing/sheet/papers.ts';

describe('papers', () => {
  it('[D6] have the published sizes', () => {
    // ASME Y14.1 sizes A, B, ARCH C, ARCH D; ISO 216 A4, A3
    expect([papers.letter.width, papers.letter.height]).toEqual([8.5, 11]);
    expect([papers.tabloid.width, papers.tabloid.height]).toEqual([11, 17]);
    expect([papers['arch-c'].width, papers['arch-c'].height]).toEqual([18, 24]);
    expect([papers['arch-d'].width, papers['arch-d'].height]).toEqual([24, 36]);
    expect(papers.a4.width * 25.4).toBeCloseTo(210, 9);
    expect(papers.a3.height * 25.4).toBeCloseTo(420, 9);
    expect(papers.a2.height * 25.4).toBeCloseTo(594, 9);
    expect(papers.a1.height * 25.4).toBeCloseTo(841, 9);
    expect([papers['ansi-c'].width, papers['ansi-c'].height]).toEqual([17, 22]);
    expect([papers['ansi-d'].width, papers['ansi-d'].height]).toEqual([22, 34]);
  });

  it('[D6] are of ISO 216 for a yard that is measured in metres', () => {
    expect(['m', 'mm'].map((system) => usualPaper(system as 'm' | 'mm'))).toEqual(['a4', 'a4']);
    expect(usualPaper('feet')).toBe('letter');
  });

  it('lie either way', () => {
    const wide = laid('letter', 'landscape');
    expect([wide.width, wide.height]).toEqual([11, 8.5]);
    expect(laid('letter', 'portrait').width).toBe(8.5);
  });
});
